import { hash } from 'node:crypto';
import type { WriteHandle } from '../handles.ts';
import type { FoundRow, Value } from './rows.ts';
import { named, shapeOf, shapesOf, type Shape } from './shapes.ts';

/** Rows that are looked at together before any of them is kept. */
const held = `
  CREATE TEMP TABLE found_revision AS SELECT * FROM revision WHERE false;
  CREATE UNIQUE INDEX temp.found_once ON found_revision (well_id, number);
  CREATE TEMP TABLE found_well AS SELECT * FROM well WHERE false;
  CREATE UNIQUE INDEX temp.found_well_once ON found_well (id);
`;

/** Where rows go that do not go into the table of their own name. */
const places: Readonly<Record<string, string>> = {
  revision: 'temp.found_revision',
  well: 'temp.found_well',
};

/** A file whose bytes are no longer those that its name was made of. */
function isChanged(table: string, row: Readonly<Record<string, Value>>): boolean {
  const { bytes } = row;
  if (table !== 'attachment' || !(bytes instanceof Uint8Array)) return false;
  return hash('sha256', bytes) !== row['hash'];
}

/** The way that led to a working copy is lost with the moves; the desk as it lay is kept. */
function withoutWay(table: string, row: Record<string, Value>): Record<string, Value> {
  return table === 'working' ? { ...row, base: null } : row;
}

function putRow(db: WriteHandle, { table }: Shape, row: Readonly<Record<string, Value>>): boolean {
  const columns = Object.keys(row);
  const into = places[table] ?? table;
  const { changes } = db
    .prepare(
      `INSERT OR IGNORE INTO ${into} (${columns.join(', ')}) VALUES (${columns.map(() => '?').join(', ')})`,
    )
    .run(Object.values(row));
  return changes > 0;
}

/** How many rows came of each table; `unknown` fit none, `changed` were files that are not whole. */
export type Tally = Map<string, number>;

/** Puts found rows into an archive that is empty; revisions and wells only beside it, as found. */
export function putFound(db: WriteHandle, rows: Iterable<FoundRow>): Tally {
  db.exec(held);
  const shapes = shapesOf(db);
  const tally: Tally = new Map();
  const count = (name: string) => tally.set(name, (tally.get(name) ?? 0) + 1);
  for (const found of rows) {
    const shape = shapeOf(shapes, found);
    if (!shape) {
      if (found.table === undefined) count('unknown');
      continue;
    }
    const row = withoutWay(shape.table, named(shape, found.values));
    if (isChanged(shape.table, row)) count('changed');
    else if (putRow(db, shape, row)) count(shape.table);
  }
  return tally;
}
