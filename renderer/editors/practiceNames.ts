import type { PracticeFile } from '../../core/practice/practice.ts';
import { shippedPractices } from '../../core/practice/shippedPractices.ts';
import { choicesById } from './choicesById.ts';
import type { Choices } from './fields/choice.ts';

/** Practices to choose from, by id: those of the user first. */
export function practiceNames(own: readonly PracticeFile[]): Choices {
  return choicesById([...own, ...shippedPractices]);
}
