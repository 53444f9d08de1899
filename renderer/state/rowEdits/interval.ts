import { valueAt, type RecordPath } from '../../../core/base/recordPath.ts';
import { insertAt, setAt } from '../edit.ts';
import { withTyped, type Desk } from '../desk.ts';
import { deleteRow, rowPath, rowsAt } from '../rows.ts';
import { rekeyed } from './typedRows.ts';

/** Depths of an interval, metres below ground; undefined where one of them is not known. */
export function spanOf(desk: Desk, list: RecordPath, index: number) {
  const from = valueAt(rowsAt(desk, list)[index], 'from');
  const to = valueAt(rowsAt(desk, list)[index], 'to');
  return typeof from === 'number' && typeof to === 'number' ? { from, to } : undefined;
}

/** Depths are split and measured to the centimetre. */
const toCentimetre = (depthM: number) => Math.round(depthM * 100 + 1e-9) / 100;

/** The middle of an interval to the centimetre, metres below ground; where it is split unasked. */
export function middleOf(desk: Desk, list: RecordPath, index: number): number | undefined {
  const span = spanOf(desk, list, index);
  return span && toCentimetre((span.from + span.to) / 2);
}

/** True for a depth, to the centimetre, that leaves something of an interval on either side. */
export function splitsAt(desk: Desk, list: RecordPath, index: number, depthM: number): boolean {
  const span = spanOf(desk, list, index);
  const at = toCentimetre(depthM);
  return span !== undefined && at > span.from && at < span.to;
}

/**
 * Makes two intervals of one, alike but for their depths. A depth outside the interval changes
 * nothing. What could not be read stays with the upper one; a foot goes with the lower.
 */
export function splitInterval(desk: Desk, list: RecordPath, index: number, depthM: number): Desk {
  if (!splitsAt(desk, list, index, depthM)) return desk;
  const at = toCentimetre(depthM);
  const row = rowsAt(desk, list)[index];
  const upper = rowPath(list, index);
  const foot = desk.typed[`${upper}.to`];
  const lower = insertAt(desk.record, list, index + 1, setAt(row, 'from', at));
  const typed = rekeyed(desk, list, (other) => (other > index ? other + 1 : other));
  const parted = { record: setAt(lower, `${upper}.to`, at), typed };
  const footless = withTyped(parted, `${upper}.to`, undefined);
  return withTyped(footless, `${rowPath(list, index + 1)}.to`, foot);
}

/** Fields in which two rows that are joined may differ without anything being lost. */
const depths = ['from', 'to'];

function textOf(value: unknown): string {
  return typeof value === 'string' ? value.trim() : '';
}

/**
 * Joins an interval with the one below: from the top of the first to the foot of the second. Where
 * they differ the first one's fields stay; fields that it lacks come from the second. `describe`
 * puts the second into words, which go into the first one's remarks where anything of it is lost.
 */
export function joinIntervals(
  desk: Desk,
  list: RecordPath,
  index: number,
  describe?: (row: unknown) => string,
): Desk {
  const [first, second] = rowsAt(desk, list).slice(index, index + 2) as Partial<Row>[];
  if (!first || !second || !spanOf(desk, list, index) || !spanOf(desk, list, index + 1))
    return desk;
  const lost = differ(first, second) ? (describe?.(second) ?? '') : '';
  const remarks = [textOf(first['remarks']), lost, textOf(second['remarks'])];
  const said = [...new Set(remarks.filter((text) => text !== ''))].join('; ');
  const joined = { ...second, ...first, to: second['to'] };
  const row = describe && said !== '' ? { ...joined, remarks: said } : joined;
  const shorter = deleteRow(desk, list, index + 1);
  const foot = desk.typed[`${rowPath(list, index + 1)}.to`];
  const record = setAt(shorter.record, rowPath(list, index), row);
  return withTyped({ ...shorter, record }, `${rowPath(list, index)}.to`, foot);
}

type Row = Readonly<Record<string, unknown>>;

/** True where the second says something that the joined row would not. */
function differ(first: Partial<Row>, second: Partial<Row>): boolean {
  const own = Object.keys(second).filter((name) => !depths.includes(name) && name !== 'remarks');
  return own.some(
    (name) => name in first && JSON.stringify(first[name]) !== JSON.stringify(second[name]),
  );
}
