import { applyPatch, type Patch } from '../base/patch.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { WellRecord } from './schema.ts';

/** What lies before the engineer: the record, and what was typed but is not part of it yet. */
export interface Desk {
  readonly record: WellRecord;
  /** Texts that could not be read, and those of a row that is not complete, by path. */
  readonly typed: Readonly<Record<RecordPath, string>>;
}

/**
 * How one desk came after another: by a step of its own, by a step that goes on with the last one
 * (a word typed letter by letter), by taking a step back, by making one again.
 */
export const moveKinds = ['edit', 'amend', 'undo', 'redo'] as const;

/** One move over a desk. Whatever its kind, its patch leads from the desk before to the next. */
export interface Move {
  readonly kind: (typeof moveKinds)[number];
  readonly patch: Patch;
}

/** The desk after moves. */
export function deskAfter(desk: Desk, moves: readonly Move[]): Desk {
  return moves.reduce((present, { patch }) => applyPatch(present, patch), desk);
}
