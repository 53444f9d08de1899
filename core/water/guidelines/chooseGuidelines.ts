import type { GuidelineFile, GuidelineSet } from './guidelineSet.ts';
import { holdGuidelines } from './holdGuidelines.ts';
import { shippedGuidelines } from './shippedGuidelines.ts';

const general = 'who2022';

/**
 * The set that samples are read by: the one that is asked for among the user's own and the shipped
 * ones. One that is not there, or cannot be held, gives way to the general one.
 */
export function guidelinesOf(
  id: string | undefined,
  own: readonly GuidelineFile[] = [],
): GuidelineSet {
  const asked = holdGuidelines(id ?? general, [...own, ...shippedGuidelines]);
  if (asked.ok) return asked.value;
  const held = holdGuidelines(general, shippedGuidelines);
  if (!held.ok) throw new Error(held.error.sentence);
  return held.value;
}
