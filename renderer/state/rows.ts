import { valueAt, type RecordPath } from '../../core/base/recordPath.ts';
import { insertAt, removeAt, reorderAt, setAt } from './edit.ts';
import { enter, join, shown, withTyped, type Desk } from './desk.ts';
import type { Field, Reading, Starts } from './field.ts';
import { rekeyed } from './rowEdits/typedRows.ts';

/** A list of the record as a table of rows; the row after the last waits to be filled. */
export interface Rows {
  readonly list: RecordPath;
  readonly fields: readonly Field[];
  /** Texts that the next row starts with, from the rows so far. */
  readonly starts?: (rows: readonly unknown[]) => Starts;
  /** Before which row the waiting row goes when it is complete; at the end where absent. */
  readonly place?: number;
}

export function rowsAt(desk: Desk, list: RecordPath): readonly unknown[] {
  const value = valueAt(desk.record, list);
  return Array.isArray(value) ? value : [];
}

export function rowPath(list: RecordPath, index: number): RecordPath {
  return `${list}[${index}]`;
}

function startsOf(desk: Desk, rows: Rows): Starts {
  return rows.starts?.(rowsAt(desk, rows.list).slice(0, rows.place)) ?? {};
}

/** What a cell shows; a waiting row shows what it starts with. */
export function shownInRow(desk: Desk, rows: Rows, index: number, field: Field): string {
  const base = rowPath(rows.list, index);
  const typed = desk.typed[join(base, field.name)];
  if (typed !== undefined) return typed;
  if (index < rowsAt(desk, rows.list).length) return shown(desk, base, field);
  return startsOf(desk, rows)[field.name] ?? '';
}

function present(reading: Reading): boolean {
  return reading.ok && reading.value !== undefined;
}

/** The waiting row becomes a row of the record as soon as all that it must have can be read. */
function complete(desk: Desk, rows: Rows, index: number): Desk {
  const base = rowPath(rows.list, index);
  const readings = rows.fields.map((field) => ({
    field,
    typed: (desk.typed[join(base, field.name)] ?? '') !== '',
    reading: field.read(shownInRow(desk, rows, index, field)),
  }));
  const lacking = readings.some(({ field, reading }) => field.required && !present(reading));
  if (lacking || !readings.some(({ typed }) => typed)) return desk;
  const good = readings.filter(({ reading }) => reading.ok);
  const row = good.reduce<object>(
    (made, { field, reading }) =>
      present(reading) ? setAt(made, field.at ?? field.name, (reading as Value).value) : made,
    {},
  );
  const filled = good.reduce<Desk>(
    (next, { field }) => withTyped(next, join(base, field.name), undefined),
    { ...desk, record: insertAt(desk.record, rows.list, index, row) },
  );
  return put(filled, rows, index);
}

/** Rows that came to the end, from row `first` on, at the place that they are meant for. */
function put(desk: Desk, { list, place = Infinity }: Rows, first: number): Desk {
  if (place >= first) return desk;
  const order = [...rowsAt(desk, list).keys()];
  order.splice(place, 0, ...order.splice(first));
  return reorderRows(desk, list, order);
}

type Value = Extract<Reading, { ok: true }>;

/** Takes a text for a cell of a row, or of the waiting row. */
export function enterInRow(
  desk: Desk,
  rows: Rows,
  index: number,
  field: Field,
  text: string,
): Desk {
  const parts = field.parts?.(text);
  if (parts) return enterParts(desk, rows, index, parts);
  const base = rowPath(rows.list, index);
  if (index < rowsAt(desk, rows.list).length) return enter(desk, base, field, text);
  // An emptied cell is remembered where the row would start with a text of its own.
  const start = startsOf(desk, rows)[field.name] ?? '';
  const kept = text === start ? undefined : text;
  return complete(withTyped(desk, join(base, field.name), kept), rows, index);
}

/** Takes one text that was typed for several cells; a row that they complete is followed. */
function enterParts(desk: Desk, rows: Rows, index: number, parts: Starts): Desk {
  const before = rowsAt(desk, rows.list).length;
  let next = desk;
  for (const field of rows.fields) {
    const text = parts[field.name];
    const grown = rowsAt(next, rows.list).length > before;
    const at = grown ? Math.min(rows.place ?? index, index) : index;
    if (text !== undefined) next = enterInRow(next, rows, at, field, text);
  }
  return next;
}

/**
 * Takes a block of texts, as a spreadsheet copies it, from a cell rightwards and down. Rows that
 * it makes come where the waiting row stands.
 */
export function pasteIntoRows(
  desk: Desk,
  { place, ...rows }: Rows,
  index: number,
  column: number,
  block: readonly (readonly string[])[],
): Desk {
  const count = rowsAt(desk, rows.list).length;
  let next = desk;
  block.forEach((line, down) =>
    line.forEach((text, right) => {
      const field = rows.fields[column + right];
      const at = Math.min(index + down, rowsAt(next, rows.list).length);
      if (field) next = enterInRow(next, rows, at, field, text.trim());
    }),
  );
  return place === undefined || index < count ? next : put(next, { ...rows, place }, count);
}

export function deleteRow(desk: Desk, list: RecordPath, index: number): Desk {
  const to = (at: number) => (at === index ? undefined : at > index ? at - 1 : at);
  const isRow = index < rowsAt(desk, list).length;
  return {
    record: isRow ? removeAt(desk.record, list, index) : desk.record,
    typed: rekeyed(desk, list, to),
  };
}

/** Puts rows into a new order: `order[k]` is where row k stood before. */
export function reorderRows(desk: Desk, list: RecordPath, order: readonly number[]): Desk {
  const to = (at: number) => (order.includes(at) ? order.indexOf(at) : at);
  return { record: reorderAt(desk.record, list, order), typed: rekeyed(desk, list, to) };
}

/** Moves a row up (-1) or down (+1); at the end of the list it stays. */
export function moveRow(desk: Desk, list: RecordPath, index: number, by: -1 | 1): Desk {
  const order = [...rowsAt(desk, list).keys()];
  const other = index + by;
  if (order[index] === undefined || order[other] === undefined) return desk;
  [order[index], order[other]] = [order[other], order[index]];
  return reorderRows(desk, list, order);
}

/** Puts rows in order of numbers, the first of which weighs most; alike rows keep their order. */
export function sortRows(desk: Desk, list: RecordPath, names: readonly string[]): Desk {
  const rows = rowsAt(desk, list);
  const keys = rows.map((row) => names.map((name) => Number(valueAt(row, name) ?? Infinity)));
  const compare = (a: number, b: number) => {
    const at = names.findIndex((_, name) => keys[a]![name] !== keys[b]![name]);
    return at < 0 ? a - b : keys[a]![at]! - keys[b]![at]!;
  };
  const order = [...rows.keys()].sort(compare);
  return order.every((from, to) => from === to) ? desk : reorderRows(desk, list, order);
}
