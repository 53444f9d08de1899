import type { PracticeFile } from '../../core/practice/practice.ts';
import { shippedPractices } from '../../core/practice/shippedPractices.ts';
import { speech } from '../state/language.svelte.ts';
import type { Choices } from './fields/choice.ts';

/** Practices to choose from, by id: those of the user first. Names that are alike bear their id. */
export function practiceNames(own: readonly PracticeFile[]): Choices {
  const all = [...own, ...shippedPractices];
  const nameOf = ({ name }: PracticeFile) => name[speech.language];
  return Object.fromEntries(
    all.map((file) => {
      const alone = all.filter((other) => nameOf(other) === nameOf(file)).length === 1;
      return [file.id, alone ? nameOf(file) : `${nameOf(file)} (${file.id})`];
    }),
  );
}
