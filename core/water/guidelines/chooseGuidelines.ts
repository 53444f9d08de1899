import type { GuidelineFile, GuidelineSet } from './guidelineSet.ts';
import { holdGuidelines } from './holdGuidelines.ts';
import { shippedGuidelines } from './shippedGuidelines.ts';

const general = 'who2022';

const none: readonly GuidelineFile[] = [];

/** Sets by the files that they were held from: many wells are read by the same ones. */
const held = new WeakMap<readonly GuidelineFile[], Map<string, GuidelineSet>>();

function holdFrom(id: string, own: readonly GuidelineFile[]): GuidelineSet {
  const asked = holdGuidelines(id, [...own, ...shippedGuidelines]);
  if (asked.ok) return asked.value;
  const instead = holdGuidelines(general, shippedGuidelines);
  if (!instead.ok) throw new Error(instead.error.sentence);
  return instead.value;
}

/**
 * The set that samples are read by: the one that is asked for among the user's own and the shipped
 * ones. One that is not there, or cannot be held, gives way to the general one. The same list of
 * files, which nobody may change, gives the very same set.
 */
export function guidelinesOf(
  id: string = general,
  own: readonly GuidelineFile[] = none,
): GuidelineSet {
  const byId = held.get(own) ?? new Map<string, GuidelineSet>();
  held.set(own, byId);
  const set = byId.get(id) ?? holdFrom(id, own);
  byId.set(id, set);
  return set;
}
