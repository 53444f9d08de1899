import { applyPatch, diff, isSame, meets, type Change, type Patch } from '../../core/base/patch.ts';
import { readPath } from '../../core/base/recordPath.ts';
import type { Desk } from '../../core/record/desk.ts';
import { deepFreeze } from '../../core/record/freeze.ts';

/** Whose work stands where two windows changed the same place. */
export type Choice = 'mine' | 'theirs';

/** A text that is not part of the record yet stands where it is typed, as in a row of a list. */
function inRecord(change: Change): Change {
  const [part, key] = change.at;
  return part === 'typed' ? { at: ['record', ...readPath(String(key))] } : change;
}

/** What of a patch touches no place of another one. */
function beside(patch: Patch, other: Patch): Patch {
  const taken = other.map(inRecord);
  return patch.filter((change) => !taken.some((place) => meets(inRecord(change), place)));
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
