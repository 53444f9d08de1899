import type { ReadHandle } from '../handles.ts';
import type { FoundRow, Value } from './rows.ts';

interface Column {
  readonly name: string;
  readonly type: 'TEXT' | 'INTEGER' | 'REAL' | 'BLOB';
  readonly notnull: 0 | 1;
  readonly dflt_value: string | null;
  readonly pk: number;
}

/** The columns of a table of today's shape. */
export interface Shape {
  readonly table: string;
  readonly columns: readonly Column[];
}

/** What tells apart tables whose columns are alike, by a key of the JSON that they keep. */
const keysOfJson: Readonly<Record<string, string>> = {
  practice: 'scope',
  guidelines: 'parameters',
  template: 'logos',
};

/** Tables that are not made out of others. */
export function shapesOf(db: ReadHandle): Shape[] {
  const names = db
    .prepare<[], string>(
      `SELECT name FROM pragma_table_list
       WHERE schema = 'main' AND type = 'table' AND wr = 0 AND name NOT LIKE 'sqlite_%' ORDER BY name`,
    )
    .pluck()
    .all();
  return names.map((table) => ({
    table,
    columns: db.prepare<[string], Column>('SELECT * FROM pragma_table_info(?)').all(table),
  }));
}

function fitsColumn({ type, notnull, pk }: Column, value: Value): boolean {
  if (value === null) return notnull === 0 || (type === 'INTEGER' && pk === 1);
  if (type === 'TEXT') return typeof value === 'string';
  if (type === 'BLOB') return value instanceof Uint8Array;
  return typeof value === 'number' && (type === 'REAL' || Number.isInteger(value));
}

/** Older rows end before the columns that came later; those have a value for that. */
function fits({ columns }: Shape, values: readonly Value[]): boolean {
  return (
    values.length <= columns.length &&
    columns.every((column, at) =>
      at < values.length
        ? fitsColumn(column, values[at]!)
        : column.notnull === 0 || column.dflt_value !== null,
    )
  );
}

function hasKey(values: readonly Value[], key: string): boolean {
  return values.some((value) => {
    if (typeof value !== 'string' || !value.startsWith('{')) return false;
    try {
      return Object.hasOwn(JSON.parse(value) as object, key);
    } catch {
      // Not JSON: a text of another kind.
      return false;
    }
  });
}

/** The table that a row belongs to; undefined where it fits none, or more than one. */
export function shapeOf(shapes: readonly Shape[], { table, values }: FoundRow): Shape | undefined {
  const fitting = shapes.filter((shape) => fits(shape, values));
  if (table !== undefined) return fitting.find((shape) => shape.table === table);
  if (fitting.length === 1) return fitting[0];
  const told = fitting.filter((shape) => {
    const key = keysOfJson[shape.table];
    return key !== undefined && hasKey(values, key);
  });
  return told.length === 1 ? told[0] : undefined;
}

/** A row by the names of its columns; later columns that it lacks are left out. */
export function named({ columns }: Shape, values: readonly Value[]): Record<string, Value> {
  return Object.fromEntries(values.map((value, at) => [columns[at]!.name, value]));
}
