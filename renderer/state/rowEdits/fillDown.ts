import type { Desk } from '../desk.ts';
import type { Field } from '../field.ts';
import { enterInRow, shownInRow, type Rows } from '../rows.ts';
import { sizeOf, type RowRange } from './range.ts';

/**
 * Writes what stands in the top row of a range into the rows below it, in one column. A range of
 * one row takes it from the row above. What is emptied at the top leaves the others as they are.
 */
export function fillDown(desk: Desk, rows: Rows, range: RowRange, field: Field): Desk {
  const top = sizeOf(range) === 1 ? range.first - 1 : range.first;
  const text = top < 0 ? '' : shownInRow(desk, rows, top, field);
  if (text === '') return desk;
  let next = desk;
  for (let index = top + 1; index <= range.last; index += 1)
    next = enterInRow(next, rows, index, field, text);
  return next;
}
