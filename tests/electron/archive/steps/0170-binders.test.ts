import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { binders } from '../../../../electron/archive/steps/0170-binders.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';

it('the step to binders adds a table for them and leaves the wells alone', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < binders.number),
  );
  db.exec(`INSERT INTO well (seq, id, number, name, district, village, state, revision, changed_at)
    VALUES (1, 'a', 'KA-1', '', '', '', '', 1, '')`);
  const before = db.prepare('SELECT * FROM well').all();
  expect(() => db.prepare('SELECT * FROM binder')).toThrow('no such table');
  takeSteps(db, [binders]);
  expect(db.prepare('SELECT * FROM well').all()).toEqual(before);
  expect(db.prepare('SELECT * FROM binder').all()).toEqual([]);
  expect(db.pragma('user_version', { simple: true })).toBe(170);
});
