import { materials } from '../../record/materials.ts';
import { fieldsOf, tableKinds, type Field, type TableKind } from '../tables/fields.ts';
import type { MappedTable, Source, TableMapping } from '../tables/mapping.ts';
import { headed, type Rows } from '../tables/rows.ts';
import type { TableSource } from '../tables/source.ts';
import { plainWords } from '../words/lexicon.ts';
import { understandWords } from '../words/understandWords.ts';
import { cellWords } from './cellWords.ts';
import { detect, type Detected } from './detect.ts';
import { headingWords, wellWords, wideRanges } from './headingWords.ts';
import { plainHeading, type PlainHeading } from './plainHeading.ts';

/** A table as it seems to be, with the ways to read it that fit its headings. */
export interface Proposal {
  readonly detected: Detected;
  /** None where no column names the well, or no kind fits. */
  readonly tables: readonly MappedTable[];
}

interface Column extends PlainHeading {
  readonly heading: string;
  /** Some of its cells, without empty ones. */
  readonly cells: readonly string[];
}

const looked = 300;

/** Headings that stand once; of doubled ones nobody can say which is meant. */
function columnsOf({ heading, rows }: Rows, absent: readonly string[]): Column[] {
  const saysSomething = (cell: string) => cell !== '' && !absent.includes(cell);
  const once = heading.filter((name) => heading.indexOf(name) === heading.lastIndexOf(name));
  return once
    .filter((name) => name !== '')
    .map((name) => {
      const at = heading.indexOf(name);
      const cells = rows.slice(0, looked).map((row) => row.cells[at]?.trim() ?? '');
      return { heading: name, ...plainHeading(name), cells: cells.filter(saysSomething) };
    });
}

const fitting = (columns: readonly Column[], words: readonly string[]) =>
  words.map((word) => columns.find((one) => one.words === word)).find((one) => one !== undefined);

/** The record's words for those that stand in the cells, as far as they are known. */
function wordsFor(kind: TableKind, name: string, field: Field, cells: readonly string[]) {
  const known = cellWords.get(`${kind} ${name}`);
  const said = [...new Set(cells)].slice(0, 200);
  const pairs = said.flatMap((cell) => {
    const plain = plainWords(cell)
      .replace(/[^\p{L}\p{N}]+/gu, ' ')
      .trim();
    const own = field.words!.find((word) => word.toLowerCase() === plain.replaceAll(' ', ''));
    const word = own ?? known?.get(plain);
    return word === undefined ? [] : [[cell, word] as const];
  });
  return pairs.length === 0 ? {} : { words: Object.fromEntries(pairs) };
}

/** The unit of a heading, or the column that names it row by row: `From`, `From unit`. */
function lengthOf(column: Column, columns: readonly Column[], usual: 'm' | 'mm'): Source {
  const named = ['uom', 'unit', 'units', 'unite', 'unidade'].map(
    (word) => `${column.words} ${word}`,
  );
  const units = column.unit ? undefined : fitting(columns, named);
  const unit = units ? { unitColumn: units.heading } : { unit: column.unit ?? usual };
  return { column: column.heading, ...unit };
}

function sourceFor(
  kind: TableKind,
  name: string,
  column: Column,
  columns: readonly Column[],
): Source {
  const field = fieldsOf[kind][name]!;
  const base = { column: column.heading };
  if (field.type === 'metres') return lengthOf(column, columns, 'm');
  if (field.type === 'millimetres') return lengthOf(column, columns, 'mm');
  if (field.words === materials) return { ...base, understand: true };
  return field.words ? { ...base, ...wordsFor(kind, name, field, column.cells) } : base;
}

/** Most of the cells of a closed list must be known, or the column is of something else. */
function isFilled(kind: TableKind, name: string, source: Source, { cells }: Column): boolean {
  const field = fieldsOf[kind][name]!;
  if (field.words === undefined || field.words === materials) return true;
  const known = cells.filter(
    (cell) => source.words !== undefined && Object.hasOwn(source.words, cell),
  );
  return known.length * 2 > cells.length;
}

type Fields = MappedTable['fields'];

interface Found {
  readonly kind: TableKind;
  readonly fields: Fields;
  readonly repeats?: boolean;
}

function fieldsFor(kind: TableKind, columns: readonly Column[]): Fields {
  const taken = new Set<string>();
  const fields: Record<string, Source[]> = {};
  for (const [name, words] of Object.entries(headingWords[kind])) {
    const column = fitting(
      columns.filter(({ heading }) => !taken.has(heading)),
      words,
    );
    if (!column) continue;
    const source = sourceFor(kind, name, column, columns);
    if (!isFilled(kind, name, source, column)) continue;
    fields[name] = [source];
    taken.add(column.heading);
  }
  return fields;
}

/** What a column says of the ground: the share of its cells that name a material. */
function groundShare({ cells }: Column): number {
  const known = cells.slice(0, 50).filter((cell) => understandWords(cell).known).length;
  return cells.length === 0 ? 0 : known / Math.min(cells.length, 50);
}

/** A log needs the ground: by the heading, or by a column that is full of materials. */
function logFields(columns: readonly Column[], well: Column): Fields | undefined {
  const { material, words, ...fields } = fieldsFor('log', columns);
  const named = [material, words].flatMap((sources) => sources?.[0]?.column ?? []);
  const telling = columns.filter((column) => column !== well && groundShare(column) > 0.3);
  const sure = telling.filter(({ heading }) => named.includes(heading));
  const full = telling.filter((column) => groundShare(column) > 0.6);
  const ground = sure.length > 0 ? named : full.slice(0, 1).map(({ heading }) => heading);
  if (ground.length === 0 || !fields['from'] || !fields['to']) return undefined;
  return {
    ...fields,
    material: ground.map((column) => ({ column, understand: true })),
    qualifiers: ground.toReversed().map((column) => ({ column, understand: true })),
    words: ground.length === 1 ? [{ column: ground[0]! }] : [{ columns: ground }],
  };
}

/** Ranges of one row a well: `screen from`, `screen to`. */
function wideTables(columns: readonly Column[]) {
  return wideRanges.flatMap(({ kind, from, to }): Found[] => {
    const [top, foot] = [fitting(columns, from), fitting(columns, to)];
    if (!top || !foot) return [];
    const annular = kind === 'gravelPack' || kind === 'cementGrout';
    const ends = {
      from: [lengthOf(top, columns, 'm')],
      to: [lengthOf(foot, columns, 'm')],
    } satisfies Fields;
    if (annular) return [{ kind: 'fills', fields: { ...ends, fill: [{ value: kind }] } }];
    const { diameter, outside } = fieldsFor('pieces', columns);
    const wide = { ...(outside ? { outside } : diameter ? { diameter } : {}) };
    return [{ kind: 'pieces', fields: { ...ends, kind: [{ value: kind }], ...wide } }];
  });
}

/** A level without a datum is taken from the ground, as most are. */
function withDatum(fields: Fields): Fields {
  return fields['reading'] ? { ...fields, datum: [{ value: 'ground' }] } : fields;
}

function fieldsOfKind(
  kind: TableKind,
  columns: readonly Column[],
  well: Column,
): Fields | undefined {
  if (kind === 'log') return logFields(columns, well);
  const fields = kind === 'levels' ? withDatum(fieldsFor(kind, columns)) : fieldsFor(kind, columns);
  const needed = Object.entries(fieldsOf[kind]).filter(([, { required }]) => required);
  const whole = needed.every(([name]) => name in fields);
  return whole && Object.keys(fields).length > 0 ? fields : undefined;
}

/** A remark or a day beside intervals or levels is none of the well's. */
function withoutRows(fields: Fields, others: readonly Found[]): Fields {
  const { notes, 'bore.finishedOn': finished, ...rest } = fields;
  const dated = others.some(({ kind, fields: theirs }) => kind === 'levels' && theirs['at']);
  return {
    ...rest,
    ...(finished && !dated ? { 'bore.finishedOn': finished } : {}),
    ...(notes && others.length === 0 ? { notes } : {}),
  };
}

function tablesFor(columns: readonly Column[], well: Column): Found[] {
  const rest = columns.filter((column) => column !== well);
  const found: Found[] = tableKinds
    .filter((kind) => kind !== 'wells')
    .flatMap((kind) => {
      const fields = fieldsOfKind(kind, rest, well);
      return fields ? [{ kind, fields }] : [];
    });
  const all = [...found, ...wideTables(rest)];
  const wells = withoutRows(fieldsFor('wells', rest), all);
  const repeated = new Set(well.cells).size < well.cells.length;
  if (Object.keys(wells).every((name) => name === 'notes')) return all;
  return [
    { kind: 'wells' as const, fields: wells, ...(repeated ? { repeats: true } : {}) },
    ...all,
  ];
}

/** What the columns of a table seem to mean, by their headings and by what stands in them. */
export function propose(source: TableSource): Proposal {
  const detected = detect(source);
  const { encoding, delimiter, headingLine, decimal, dateOrder, absent } = detected;
  const text = encoding && delimiter ? { encoding, delimiter } : {};
  const nothing = absent ? { absent: [...absent] } : {};
  const layout = { ...text, headingLine, decimal, dateOrder, ...nothing };
  const columns = columnsOf(headed(source.rows(layout), detected.headingLine), absent ?? []);
  const well = fitting(columns, wellWords);
  if (!well) return { detected, tables: [] };
  const found = tablesFor(columns, well);
  const tables = found.map((one) => ({
    ...one,
    file: source.name,
    ...(source.sheet === undefined ? {} : { sheet: source.sheet }),
    well: well.heading,
    ...(found.length > 1 && one.kind !== 'wells' ? { sparse: true } : {}),
    ...layout,
  }));
  return { detected, tables };
}

/** The proposals for several tables as one mapping; undefined where nothing fits any of them. */
export function proposeMapping(sources: readonly TableSource[]): TableMapping | undefined {
  const tables = sources.flatMap((source) => propose(source).tables);
  return tables.length === 0 ? undefined : { tables };
}
