import { fieldsOf, tableKinds, type TableKind } from '../tables/fields.ts';
import type { Carried } from '../losses.ts';

/** A column of a table: the field that it holds and how it is headed. */
export interface Column {
  readonly name: string;
  readonly heading: string;
}

/** The column that says which well a row belongs to. */
export const wellColumn = 'well';

const unitOf = (type: string) =>
  type === 'metres' ? ' [m]' : type === 'millimetres' ? ' [mm]' : '';

/** Columns that are only for reading what others wrote. */
const onlyRead: Partial<Record<TableKind, readonly string[]>> = {
  pieces: ['diameter'],
  fills: ['aroundDiameter'],
};

const columns = new Map<TableKind, readonly Column[]>(
  tableKinds.map((kind) => [
    kind,
    Object.entries(fieldsOf[kind])
      .filter(([name]) => !onlyRead[kind]?.includes(name))
      .map(([name, { type }]) => ({ name, heading: `${name}${unitOf(type)}` })),
  ]),
);

/** The columns of a kind of table, lengths with their unit. */
export function columnsOf(kind: TableKind): readonly Column[] {
  return columns.get(kind)!;
}

const listOf: Readonly<Record<Exclude<TableKind, 'wells' | 'pieces'>, string>> = {
  log: 'log',
  sections: 'bore.sections',
  fills: 'annulus',
  levels: 'levels',
  strikes: 'strikes',
};

const inLists = Object.entries(listOf).flatMap(([kind, list]) =>
  columnsOf(kind as TableKind).map(({ name }) => `${list}[].${name}`),
);

/** What the tables hold of a record. */
export const carriedBySheets: Carried = new Set([
  'schemaVersion',
  ...columnsOf('wells').map(({ name }) => name),
  ...inLists.filter((kind) => kind !== 'log[].qualifiers' && kind !== 'annulus[].string'),
  'log[].qualifiers[].material',
  'annulus[].around',
  'strings[].name',
  'strings[].set',
  'strings[].components[].count',
  'strings[].components[].length',
  ...columnsOf('pieces').map(({ name }) => `strings[].components[].${name}`),
]);

/** Where a table stands: in a file of its own, or on a sheet of one. */
export type PlaceOf = (kind: TableKind) => { readonly file: string; readonly sheet?: string };

/**
 * The mapping by which the tables come back, for those that were written. `combined` are the cells
 * that name several second materials.
 */
export function mappingOf(
  written: ReadonlySet<TableKind>,
  placeOf: PlaceOf,
  combined: ReadonlySet<string>,
): object {
  const words = Object.fromEntries([...combined].sort().map((cell) => [cell, cell.split('; ')]));
  const tables = tableKinds
    .filter((kind) => written.has(kind))
    .map((kind) => ({
      kind,
      ...placeOf(kind),
      well: wellColumn,
      fields: Object.fromEntries(
        columnsOf(kind).map(({ name, heading }) => {
          const { type } = fieldsOf[kind][name]!;
          const unit = unitOf(type).replace(/[ [\]]/g, '');
          const source = {
            column: heading,
            ...(unit === '' ? {} : { unit }),
            ...(type === 'materials' && combined.size > 0 ? { words } : {}),
          };
          return [name, source] as const;
        }),
      ),
    }));
  return { about: 'Wells as tables, each column under the name of its field', tables };
}
