import { diff } from '../core/base/patch.ts';
import type { Move } from '../core/record/desk.ts';

/** The move from one desk to another; its record may be in any condition. */
export function moveTo(before: object, after: object, kind: Move['kind'] = 'edit'): Move {
  return { kind, patch: diff(before, after) };
}
