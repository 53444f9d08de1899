import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { practices } from '../../../../electron/archive/steps/0060-practices.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';

it('the step to practices adds a table for them and leaves the wells alone', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < practices.number),
  );
  db.exec(`INSERT INTO well (seq, id, number, name, district, village, state, revision, changed_at)
    VALUES (1, 'a', 'KA-1', '', '', '', '', 1, '')`);
  const before = db.prepare('SELECT * FROM well').all();
  expect(() => db.prepare('SELECT * FROM practice')).toThrow('no such table');
  takeSteps(db, [practices]);
  expect(db.prepare('SELECT * FROM well').all()).toEqual(before);
  expect(db.prepare('SELECT * FROM practice').all()).toEqual([]);
  expect(db.pragma('user_version', { simple: true })).toBe(60);
});
