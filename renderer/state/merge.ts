import { applyPatch, diff, isSame, meets, type Change, type Patch } from '../../core/base/patch.ts';
import { readPath, type PathStep } from '../../core/base/recordPath.ts';
import type { Desk } from '../../core/record/desk.ts';
import { deepFreeze } from '../../core/record/freeze.ts';

/** Whose work stands where two windows changed the same place. */
export type Choice = 'mine' | 'theirs';

/** Where in the record a change of the desk stands; for a text that is no part of it, is typed. */
export function placeOf({ at: [part, ...steps] }: Change): readonly PathStep[] {
  return part === 'typed' ? readPath(String(steps[0])) : steps;
}

/** What of a patch touches no place of another one. */
function beside(patch: Patch, other: Patch): Patch {
  const taken = other.map((change) => ({ at: placeOf(change) }));
  return patch.filter((change) => !taken.some((place) => meets({ at: placeOf(change) }, place)));
}

/**
 * One desk of two that came from the one that is on disk. Undefined where both changed the same
 * place in different ways and nobody chose; where somebody chose, only there is the other's work
 * passed over.
 */
export function merge(kept: Desk, mine: Desk, theirs: Desk, choice?: Choice): Desk | undefined {
  const ours = diff(kept, mine);
  const others = diff(kept, theirs).filter((one) => !ours.some((own) => isSame(own, one)));
  const free = beside(others, ours);
  if (choice === undefined && free.length < others.length) return undefined;
  const merged =
    choice === 'theirs' ? applyPatch(theirs, beside(ours, others)) : applyPatch(mine, free);
  return deepFreeze(merged);
}
