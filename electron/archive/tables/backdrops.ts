import type { MapShape } from '../../../core/base/geo/shapes.ts';
import type { ReadHandle, WriteHandle } from '../handles.ts';

/** Lines and outlines that lie under the wells of a map. */
export interface KeptBackdrop {
  readonly id: string;
  readonly name: string;
  readonly shapes: readonly MapShape[];
  readonly addedAt: string;
}

interface Row {
  readonly id: string;
  readonly name: string;
  readonly shapes: string;
  readonly added_at: string;
}

function rowOf({ shapes, addedAt, ...backdrop }: KeptBackdrop): Row {
  return { ...backdrop, shapes: JSON.stringify(shapes), added_at: addedAt };
}

function backdropOf({ shapes, added_at, ...row }: Row): KeptBackdrop {
  return { ...row, shapes: JSON.parse(shapes) as MapShape[], addedAt: added_at };
}

/** In the order in which they were added. */
export function listBackdrops(db: ReadHandle): KeptBackdrop[] {
  return db
    .prepare<[], Row>('SELECT id, name, shapes, added_at FROM backdrop ORDER BY seq')
    .all()
    .map(backdropOf);
}

export function putBackdrop(db: WriteHandle, backdrop: KeptBackdrop): void {
  db.prepare<[Row]>(
    'INSERT INTO backdrop (id, name, shapes, added_at) VALUES (@id, @name, @shapes, @added_at)',
  ).run(rowOf(backdrop));
}

export function dropBackdrop(db: WriteHandle, id: string): void {
  db.prepare<[string]>('DELETE FROM backdrop WHERE id = ?').run(id);
}

export function countBackdrops(db: ReadHandle): number {
  return db.prepare<[], number>('SELECT count(*) FROM backdrop').pluck().get()!;
}
