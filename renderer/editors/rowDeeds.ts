import type { RecordPath } from '../../core/base/recordPath.ts';
import type { Desk } from '../state/desk.ts';
import { fillDown } from '../state/rowEdits/fillDown.ts';
import { joinIntervals } from '../state/rowEdits/interval.ts';
import { deleteRows, duplicateRows, moveRows } from '../state/rowEdits/place.ts';
import { sizeOf, type RowRange } from '../state/rowEdits/range.ts';
import { rowsAt, type Rows } from '../state/rows.ts';
import type { TableShape } from './chapter.ts';
import type { EntryField } from './fields/entryField.ts';
import type { Deed } from './tableKeys.ts';

/** Rows of a table that something is to be done with, and the field under the hand. */
export interface Marked {
  readonly table: TableShape;
  readonly rows: Rows;
  readonly range: RowRange;
  readonly field?: EntryField | undefined;
}

/** Deeds that change rows at once; the others ask for more or move the hand. */
export type Change = Exclude<Deed, 'more' | 'insert' | 'split'>;

/** The desk after a deed, and by how many rows the marked ones are further down. */
export interface Done {
  readonly desk: Desk;
  readonly by: number;
}

function joined(desk: Desk, { table, rows, range }: Marked): Desk {
  const last = sizeOf(range) === 1 ? range.first + 1 : range.last;
  let next = desk;
  for (let left = range.first; left < last; left += 1)
    next = joinIntervals(next, rows.list, range.first, table.describe);
  return next;
}

function moved(desk: Desk, list: RecordPath, range: RowRange, by: -1 | 1): Done {
  const next = moveRows(desk, list, range, by);
  return { desk: next, by: next === desk ? 0 : by };
}

/** Does what a key or button asks with the rows that are marked. */
export function doDeed(desk: Desk, deed: Change, marked: Marked): Done {
  const { list } = marked.rows;
  const { range, field, rows } = marked;
  switch (deed) {
    case 'up':
      return moved(desk, list, range, -1);
    case 'down':
      return moved(desk, list, range, 1);
    case 'duplicate': {
      const next = duplicateRows(desk, list, range);
      return { desk: next, by: rowsAt(next, list).length - rowsAt(desk, list).length };
    }
    case 'join':
      return { desk: marked.table.intervals ? joined(desk, marked) : desk, by: 0 };
    case 'fillDown':
      return { desk: field ? fillDown(desk, rows, range, field) : desk, by: 0 };
    case 'remove':
      return { desk: deleteRows(desk, list, range), by: 0 };
  }
}
