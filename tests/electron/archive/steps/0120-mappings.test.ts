import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { mappings } from '../../../../electron/archive/steps/0120-mappings.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';

it('the step to mappings adds a table and leaves the wells alone', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < mappings.number),
  );
  db.exec(`INSERT INTO well (seq, id, number, name, district, village, state, revision, changed_at)
    VALUES (1, 'a', 'KA-1', '', '', '', '', 1, '')`);
  const before = db.prepare('SELECT * FROM well').all();
  takeSteps(db, [mappings]);
  expect(db.prepare('SELECT * FROM well').all()).toEqual(before);
  db.exec(`INSERT INTO mapping VALUES ('Lot 3', '{}', '')`);
  expect(() => db.exec(`INSERT INTO mapping VALUES ('Lot 3', '{}', '')`)).toThrow('UNIQUE');
  expect(db.pragma('user_version', { simple: true })).toBe(120);
});
