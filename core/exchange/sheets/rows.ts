import { valueAt } from '../../base/recordPath.ts';
import type { AnnulusFill } from '../../record/annulus.ts';
import { materials } from '../../record/materials.ts';
import type { WellRecord } from '../../record/schema.ts';
import { layStrings, type LaidString } from '../laid/layPieces.ts';
import { loseTally } from '../laid/loseTally.ts';
import type { Losing } from '../losses.ts';
import { fieldsOf, type Field, type TableKind } from '../tables/fields.ts';
import { joinPieces, type Piece } from '../tables/joinPieces.ts';

/** A cell as it is written; numbers as numbers. */
export type SheetCell = string | number | undefined;

/** A row of one kind of table, by the names of the fields. */
export interface SheetRow {
  readonly kind: TableKind;
  readonly cells: Readonly<Record<string, SheetCell>>;
}

type Entry = Readonly<Record<string, unknown>>;

interface Writes {
  readonly record: WellRecord;
  readonly losing: Losing;
  /** Figures of a number that a cell keeps; all where absent. */
  readonly figures: number | undefined;
}

function textCell({ losing }: Writes, path: string, text: string): string {
  const plain = text.replace(/\r\n?/g, '\n').trim();
  if (plain !== text || plain === '') losing.lose(path, 'A cell has no blanks at its ends.');
  // eslint-disable-next-line no-control-regex -- control characters are what is looked for
  if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ud800-\udfff\ufffe\uffff]/.test(text))
    losing.lose(path, 'A cell has no such characters.');
  return plain;
}

function momentCell({ losing }: Writes, path: string, moment: string): string {
  if (!moment.includes('.')) return moment;
  losing.lose(path, 'It is cut to whole seconds.');
  return moment.replace(/\.\d+/, '');
}

function numberCell({ losing, figures }: Writes, path: string, value: number): number {
  if (figures === undefined) return value;
  const kept = Number(value.toPrecision(figures));
  if (kept !== value) losing.lose(path, `A number has ${figures} figures.`);
  return kept;
}

/** Second materials with a semicolon between them, in the order of the list. */
function materialsCell({ losing }: Writes, path: string, value: unknown): string | undefined {
  const said = (value as { material: string; degree?: string }[]).map(({ material }) => material);
  const kept = materials.filter((material) => said.includes(material));
  if (kept.join() !== said.join())
    losing.lose(path, 'Second materials come back in the order of the list, each once.');
  return kept.length === 0 ? undefined : kept.join('; ');
}

function cellOf(writes: Writes, field: Field, path: string, value: unknown): SheetCell {
  if (value === undefined) return undefined;
  if (typeof value === 'number') return numberCell(writes, path, value);
  if (field.type === 'materials') return materialsCell(writes, path, value);
  if (field.type === 'moment') return momentCell(writes, path, value as string);
  return textCell(writes, path, value as string);
}

/** The cells of an entry of the record, by the fields of its kind. */
function cellsOf(writes: Writes, kind: TableKind, entry: Entry, path: string) {
  return Object.fromEntries(
    Object.entries(fieldsOf[kind]).map(([name, field]) => {
      const value = valueAt(entry, name);
      const where = path === '' ? name : `${path}.${name}`;
      return [name, cellOf(writes, field, where, value)] as const;
    }),
  );
}

interface Ranged {
  readonly from: number;
  readonly to: number;
}

const byDepth = (a: Ranged, b: Ranged) => a.from - b.from || a.to - b.to;
const byFoot = (a: Ranged, b: Ranged) => a.to - b.to;

/** Rows of ranges; those without thickness stay out, and the rest come back in order. */
function rangedRows(
  writes: Writes,
  kind: TableKind,
  path: string,
  order: (a: Ranged, b: Ranged) => number = byDepth,
): SheetRow[] {
  const list = (valueAt(writes.record, path) ?? []) as readonly Ranged[];
  const kept = list.flatMap((entry, at) => (entry.to > entry.from ? [{ entry, at }] : []));
  const sorted = kept.toSorted((a, b) => order(a.entry, b.entry));
  if (kept.length < list.length || sorted.some(({ at }, place) => at !== kept[place]!.at))
    writes.losing.lose(
      path,
      'Rows come back in order of depth, those without thickness not at all.',
    );
  return kept.map(({ entry, at }) => ({
    kind,
    cells: cellsOf(writes, kind, entry as unknown as Entry, `${path}[${at}]`),
  }));
}

function listRows(writes: Writes, kind: 'levels' | 'strikes'): SheetRow[] {
  return (writes.record[kind] ?? []).map((entry, at) => ({
    kind,
    cells: cellsOf(writes, kind, entry, `${kind}[${at}]`),
  }));
}

/** What each string is called: its name, or its number from 1. */
function namesOf({ losing }: Writes, strings: readonly LaidString[]): string[] {
  const names = strings.map(({ string }) => string.name?.trim() ?? '');
  return strings.map(({ index, string }, at) => {
    const own = names[at]!;
    const name = own !== '' && names.indexOf(own) === at ? own : `${index + 1} ${own}`.trim();
    if (name !== string.name) losing.lose(`strings[${index}].name`, `It comes back as "${name}".`);
    return name.replace(/\r\n?/g, '\n');
  });
}

/** Strings come back in the order in which a hole is built, not in that of the record. */
function loseOrder({ losing }: Writes, names: readonly string[], pieces: readonly Piece[]): void {
  const back = joinPieces(pieces).strings.map(({ name }) => name);
  if (back.join('\n') !== names.join('\n'))
    losing.lose('strings', 'Strings come back in order of depth, the shallowest first.');
}

function pieceRows(writes: Writes, strings: readonly LaidString[], names: readonly string[]) {
  const laid = strings.flatMap(({ pieces }, at) =>
    pieces.map((piece) => ({ piece, name: names[at]! })),
  );
  const kept = laid.filter(({ piece: { from, to } }) => to > from);
  const pieces = kept.map(({ piece: { from, to, component }, name }) => ({
    ...{ from, to, component, string: name },
  }));
  loseOrder(writes, names, pieces);
  return kept.map(({ piece: { from, to, component, path }, name }): SheetRow => {
    const cells = cellsOf(writes, 'pieces', component, path);
    return { kind: 'pieces', cells: { ...cells, from, to, string: name } };
  });
}

function fillRows(writes: Writes, strings: readonly LaidString[], names: readonly string[]) {
  const rows = rangedRows(writes, 'fills', 'annulus');
  const fills = (writes.record.annulus ?? []).filter(({ from, to }) => to > from);
  return rows.map((row, at): SheetRow => {
    const { around } = fills[at] as AnnulusFill;
    const string = names[strings.findIndex(({ index }) => index === around)];
    if (around !== undefined && string === undefined)
      writes.losing.lose(`annulus[${at}].around`, 'The string that it surrounds has no pieces.');
    return { kind: 'fills', cells: { ...row.cells, string } };
  });
}

function loseAround({ record, losing }: Writes, strings: readonly LaidString[]): void {
  const isWhole = strings.length === (record.strings ?? []).length;
  if (!isWhole && (record.annulus ?? []).some(({ around }) => around !== undefined))
    losing.lose('annulus', 'Fills come back round the strings that have pieces.');
}

/** All rows of a well, table by table. */
export function sheetRows(
  record: WellRecord,
  losing: Losing,
  figures: number | undefined,
): SheetRow[] {
  const writes: Writes = { record, losing, figures };
  const strings = layStrings(record);
  loseTally(record, strings, losing);
  loseAround(writes, strings);
  const names = namesOf(writes, strings);
  return [
    { kind: 'wells', cells: cellsOf(writes, 'wells', record, '') },
    ...rangedRows(writes, 'log', 'log'),
    ...rangedRows(writes, 'sections', 'bore.sections', byFoot),
    ...pieceRows(writes, strings, names),
    ...fillRows(writes, strings, names),
    ...listRows(writes, 'levels'),
    ...listRows(writes, 'strikes'),
  ];
}
