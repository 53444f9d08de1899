import { applyPatch, isSame } from '../../core/base/patch.ts';
import type { Desk, Move } from '../../core/record/desk.ts';
import { deepFreeze } from '../../core/record/freeze.ts';
import { amend, begin, push, redo, undo, type History } from './history.ts';

const back = { undo, redo } as const;

/**
 * What a move makes of a history. A step back or forth in a window that held other steps than
 * these leads elsewhere; it is then a step of its own.
 */
function after(history: History<Desk>, { kind, patch }: Move): History<Desk> {
  const present = deepFreeze(applyPatch(history.present, patch));
  if (kind === 'amend') return amend(history, present);
  if (kind === 'edit') return push(history, present);
  const moved = back[kind](history);
  return isSame(moved.present, present) ? moved : push(history, present);
}

/** The history that moves over a desk made, as far as undo leads back. */
export function replay(base: Desk, moves: readonly Move[]): History<Desk> {
  return moves.reduce(after, begin(deepFreeze(base)));
}
