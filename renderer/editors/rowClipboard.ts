import type { RecordPath } from '../../core/base/recordPath.ts';
import type { Desk } from '../state/desk.ts';
import { takeRows, type TakenRows } from '../state/rowEdits/place.ts';
import type { RowRange } from '../state/rowEdits/range.ts';
import { sheetText } from '../state/rowEdits/sheetText.ts';
import type { Rows } from '../state/rows.ts';
import type { EntryField } from './fields/entryField.ts';

/**
 * Rows copied last, beside the text that went to the clipboard: while that text is still there,
 * pasting lays down the rows themselves, with what no column shows. Rows of the clipboard itself
 * are never trusted to be rows of ours.
 */
let last: { readonly text: string; readonly taken: TakenRows } | undefined;

/** Lists alike but for the numbers in their paths: the tally of any string is one kind. */
const kindOf = (list: RecordPath) => list.replace(/\[\d+\]/g, '[]');

/** Takes rows up and gives their text for the clipboard. */
export function copyRows(
  desk: Desk,
  rows: Rows,
  range: RowRange,
  columns: readonly EntryField[],
): string {
  const text = sheetText(desk, rows, range, columns);
  last = { text, taken: takeRows(desk, rows.list, range) };
  return text;
}

/** Line ends differ from one clipboard to another. */
const plain = (text: string) => text.replace(/\r\n?/g, '\n').replace(/\n$/, '');

/** The rows that a text of the clipboard stands for, where they fit into a list. */
export function copiedRows(text: string, list: RecordPath): TakenRows | undefined {
  if (!last || plain(text) !== plain(last.text)) return undefined;
  return kindOf(last.taken.list) === kindOf(list) ? last.taken : undefined;
}
