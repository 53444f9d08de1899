import type { GuidelineFile } from '../../core/water/guidelines/guidelineSet.ts';
import { shippedGuidelines } from '../../core/water/guidelines/shippedGuidelines.ts';
import { choicesById } from './choicesById.ts';
import type { Choices } from './fields/choice.ts';

/** Sets of guideline values to choose from, by id: those of the user first. */
export function guidelineNames(own: readonly GuidelineFile[]): Choices {
  return choicesById([...own, ...shippedGuidelines]);
}
