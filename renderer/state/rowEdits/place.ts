import type { RecordPath } from '../../../core/base/recordPath.ts';
import { insertAt } from '../edit.ts';
import type { Desk } from '../desk.ts';
import { deleteRow, reorderRows, rowsAt } from '../rows.ts';
import { sizeOf, within, type RowRange } from './range.ts';
import { rekeyed, typedRow, withTypedRow, type TypedRow } from './typedRows.ts';

/** Rows as they are taken up to be laid down elsewhere: each with what was typed in it. */
export interface TakenRows {
  readonly list: RecordPath;
  readonly rows: readonly { readonly row: unknown; readonly typed: TypedRow }[];
}

/** Takes up rows without taking them away. */
export function takeRows(desk: Desk, list: RecordPath, range: RowRange): TakenRows {
  const rows = rowsAt(desk, list)
    .slice(range.first, range.last + 1)
    .map((row, at) => ({ row, typed: typedRow(desk, list, range.first + at) }));
  return { list, rows };
}

/** Lays rows down before the row at `index`; those from there on go further down. */
export function layRows(desk: Desk, list: RecordPath, index: number, taken: TakenRows): Desk {
  const at = Math.min(index, rowsAt(desk, list).length);
  const moved = rekeyed(desk, list, (row) => (row >= at ? row + taken.rows.length : row));
  return taken.rows.reduce<Desk>(
    (next, { row, typed }, by) => ({
      record: insertAt(next.record, list, at + by, row),
      typed: withTypedRow(next.typed, list, at + by, typed),
    }),
    { ...desk, typed: moved },
  );
}

/** The same rows once more, below themselves. */
export function duplicateRows(desk: Desk, list: RecordPath, range: RowRange): Desk {
  const rows = within(range, rowsAt(desk, list).length);
  return rows ? layRows(desk, list, rows.last + 1, takeRows(desk, list, rows)) : desk;
}

/** Takes several rows away, with what was typed in them; the row that waits is emptied. */
export function deleteRows(desk: Desk, list: RecordPath, { first, last }: RowRange): Desk {
  let next = desk;
  for (let index = last; index >= first; index -= 1) next = deleteRow(next, list, index);
  return next;
}

/** Moves several rows up (-1) or down (+1) together; at the end of the list they stay. */
export function moveRows(desk: Desk, list: RecordPath, range: RowRange, by: -1 | 1): Desk {
  const count = rowsAt(desk, list).length;
  const rows = within(range, count);
  if (!rows || rows.first + by < 0 || rows.last + by >= count) return desk;
  const order = [...Array(count).keys()];
  const taken = order.splice(rows.first, sizeOf(rows));
  order.splice(rows.first + by, 0, ...taken);
  return reorderRows(desk, list, order);
}
