import { materials } from '../../record/materials.ts';
import { reason, type Reason } from '../reasons/reason.ts';
import { understandWords } from '../words/understandWords.ts';
import type { Field } from './fields.ts';
import type { MappedTable, Source, TableMapping } from './mapping.ts';
import { told } from './trouble.ts';
import { convertLength, lengthUnitOf, lengthUnits } from './units.ts';

/** What a field's sources say in one row. A trouble names the column and the reason. */
export type Cell =
  | { readonly value: unknown }
  | { readonly nothing: true }
  | { readonly column: string; readonly sentence: string; readonly reason: Reason };

/** A time without its offset from UTC: the day stands, the rest is kept as it was written. */
export interface HalfTime {
  readonly day: string;
  readonly asWritten: string;
}

/** How a table's cells are written. */
export interface Writing {
  readonly decimal: '.' | ',';
  readonly absent: readonly string[];
  readonly dateOrder: 'ymd' | 'dmy' | 'mdy';
}

/** The cells of one row by their headings. */
export type CellsByColumn = ReadonlyMap<string, string>;

const nothing: Cell = { nothing: true };

/** The table's own settings win over those of the whole mapping. */
export function writingOf(mapping: TableMapping, mapped: MappedTable): Writing {
  return {
    decimal: mapped.decimal ?? mapping.decimal ?? '.',
    absent: ['', ...(mapped.absent ?? mapping.absent ?? [])],
    dateOrder: mapped.dateOrder ?? mapping.dateOrder ?? 'ymd',
  };
}

/** Text of a source in a row; undefined where the row says nothing. */
function textOf(one: Source, cells: CellsByColumn, writing: Writing, joint: string) {
  if (one.value !== undefined) return one.value;
  const said = (one.columns ?? [one.column!])
    .map((column) => cells.get(column)?.trim() ?? '')
    .filter((text) => !writing.absent.includes(text));
  return said.length === 0 ? undefined : said.join(joint);
}

const columnOf = (one: Source) => one.column ?? one.columns?.join(' + ') ?? '';

/** Marks for thousands are refused: `1.250` would be read as either number. */
function readNumber(text: string, decimal: '.' | ','): number | undefined {
  // With a decimal comma a point makes the text unreadable, so that it is not taken for one.
  const plain = decimal === ',' ? text.replace('.', '?').replace(',', '.') : text;
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : undefined;
}

function numberCell(text: string, one: Source, writing: Writing): Cell {
  const value = readNumber(text, writing.decimal);
  if (value !== undefined) return { value };
  const code = writing.decimal === ',' ? 'noCommaNumber' : 'noPointNumber';
  return { column: columnOf(one), ...told(reason(code, { text })) };
}

function countCell(text: string, one: Source): Cell {
  if (/^\d+$/.test(text)) return { value: Number(text) };
  return { column: columnOf(one), ...told(reason('notWhole', { text })) };
}

/** A length in the record's unit; the unit comes from the mapping or from the row itself. */
function lengthCell(
  text: string,
  one: Source,
  cells: CellsByColumn,
  writing: Writing,
  to: 'm' | 'mm',
): Cell {
  const written = one.unitColumn === undefined ? one.unit! : cells.get(one.unitColumn)!.trim();
  const unit = lengthUnitOf(written);
  if (unit === undefined) {
    const says = reason('noUnit', { written, units: lengthUnits.join(', ') });
    return { column: one.unitColumn!, ...told(says) };
  }
  const read = numberCell(text, one, writing);
  if (!('value' in read)) return read;
  return { value: convertLength(read.value as number, unit, to) };
}

/** Gregorian, since a date library would bring its own time zone. */
const daysOf = (year: number, month: number) =>
  month === 2
    ? (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
      ? 29
      : 28
    : [4, 6, 9, 11].includes(month)
      ? 30
      : 31;

/** A calendar day as ISO 8601; a time or zone that follows it is not looked at. */
function readDay(text: string, order: Writing['dateOrder']): string | undefined {
  const parts = /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})(?:[T Z+].*)?$/.exec(text);
  if (!parts) return undefined;
  // Nobody writes a year first and then the day, so that it needs no order.
  const means = parts[1]!.length === 4 ? 'ymd' : order;
  const part = (letter: string) => parts[means.indexOf(letter) + 1]!;
  const [year, month, day] = [part('y'), Number(part('m')), Number(part('d'))];
  const exists = month >= 1 && month <= 12 && day >= 1 && day <= daysOf(Number(year), month);
  if (year.length !== 4 || !exists) return undefined;
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

function dayCell(text: string, one: Source, writing: Writing): Cell {
  const value = readDay(text, writing.dateOrder);
  if (value !== undefined) return { value };
  const says = reason('notDay', { text, order: writing.dateOrder });
  return { column: columnOf(one), ...told(says) };
}

/** A day alone stays a day; the mapping's offset serves times that carry none. */
function momentCell(text: string, one: Source, writing: Writing): Cell {
  const day = readDay(text, writing.dateOrder);
  if (day === undefined) return dayCell(text, one, writing);
  const time = /[T ](\d\d:\d\d(?::\d\d)?)(Z|[+-]\d\d:\d\d)?$/.exec(text);
  if (!time) return { value: day };
  const offset = time[2] ?? one.offset;
  if (offset === undefined) return { value: { day, asWritten: text } satisfies HalfTime };
  return { value: `${day}T${time[1]}${offset}` };
}

/** What a table of words makes of a text; undefined where it does not know it. */
function lookUp(text: string, words: NonNullable<Source['words']>) {
  const wanted = text.toLowerCase();
  const key = Object.keys(words).find((one) => one.toLowerCase() === wanted);
  return key === undefined ? undefined : words[key];
}

/** The text in the mapping's words, before the field's own type; null says nothing. */
function translate(text: string, one: Source): string | readonly string[] | null | undefined {
  return one.words === undefined ? text : lookUp(text, one.words);
}

/** What the table of words makes of a text, where the mapping asks for it. */
function understood(text: string, one: Source) {
  const known = one.understand === true && lookUp(text, one.words ?? {}) === undefined;
  return known ? understandWords(text) : undefined;
}

/** The record's word for a text: by the mapping's table, else where it is such a word itself. */
function meantWord(text: string, one: Source, field: Field): string | null | undefined {
  const word = one.words === undefined ? undefined : lookUp(text, one.words);
  if (word === null) return null;
  const meant = word ?? text;
  return typeof meant === 'string' && field.words!.includes(meant) ? meant : undefined;
}

/** Whether a field of a closed list makes something of a text, or knows that it says nothing. */
export function isKnownWord(text: string, one: Source, field: Field): boolean {
  return meantWord(text, one, field) !== undefined;
}

/** A word of the mapping's table, or one of the record's own. */
function wordCell(text: string, one: Source, field: Field): Cell {
  const meant = understood(text, one);
  if (meant?.known) return { value: meant.material };
  const word = meantWord(text, one, field);
  if (word === null) return nothing;
  if (word !== undefined) return { value: word };
  return { column: columnOf(one), ...told(reason('unknownWord', { text })) };
}

/** Second materials; words that name none are silent, since the log keeps its words anyway. */
function materialsCell(text: string, one: Source): Cell {
  const meant = understood(text, one);
  if (meant) return meant.qualifiers.length === 0 ? nothing : { value: meant.qualifiers };
  const found = [translate(text, one) ?? []].flat();
  const known = materials.filter((material) => found.includes(material));
  return known.length === 0 ? nothing : { value: known.map((material) => ({ material })) };
}

/** Text stays as written where the table of words does not know it. */
function textCell(text: string, one: Source): Cell {
  const said = one.words === undefined ? text : lookUp(text, one.words);
  if (said === null) return nothing;
  return { value: said === undefined ? text : [said].flat().join(', ') };
}

function readSource(field: Field, one: Source, cells: CellsByColumn, writing: Writing): Cell {
  const text = textOf(one, cells, writing, field.type === 'moment' ? 'T' : '; ');
  if (text === undefined) return nothing;
  switch (field.type) {
    case 'text':
      return textCell(text, one);
    case 'word':
      return wordCell(text, one, field);
    case 'materials':
      return materialsCell(text, one);
    case 'day':
      return dayCell(text, one, writing);
    case 'moment':
      return momentCell(text, one, writing);
    case 'number':
      return numberCell(text, one, writing);
    case 'count':
      return countCell(text, one);
    case 'metres':
      return lengthCell(text, one, cells, writing, 'm');
    case 'millimetres':
      return lengthCell(text, one, cells, writing, 'mm');
  }
}

/**
 * A field's value in one row: the first source that says something wins. A word that no source
 * knows becomes the field's fallback, or a trouble where it has none.
 */
export function readCell(
  field: Field,
  sources: readonly Source[],
  cells: CellsByColumn,
  writing: Writing,
): Cell {
  let unknown: Cell | undefined;
  for (const one of sources) {
    const cell = readSource(field, one, cells, writing);
    if ('value' in cell) return cell;
    if ('sentence' in cell && field.type !== 'word') return cell;
    if ('sentence' in cell) unknown ??= cell;
  }
  if (unknown && field.fallback !== undefined) return { value: field.fallback };
  return unknown ?? nothing;
}
