import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { issues } from '../../../../electron/archive/steps/0080-issues.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';

it('the step to issues adds tables that nobody writes over, and leaves wells alone', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < issues.number),
  );
  db.exec(`INSERT INTO well (seq, id, number, name, district, village, state, revision, changed_at)
    VALUES (1, 'a', 'KA-1', '', '', '', '', 1, '')`);
  const before = db.prepare('SELECT * FROM well').all();
  expect(() => db.prepare('SELECT * FROM issue')).toThrow('no such table');
  takeSteps(db, [issues]);
  expect(db.prepare('SELECT * FROM well').all()).toEqual(before);
  expect(db.pragma('user_version', { simple: true })).toBe(80);
  db.exec(
    `INSERT INTO issue VALUES ('a', 1, 1, 'as-built A4', 'en', 'a.pdf', 'h', '', '[]', x'00')`,
  );
  db.exec(`INSERT INTO issue_seal VALUES ('a', 1, 1, '', x'00')`);
  expect(() => db.exec(`UPDATE issue SET pdf = x'01'`)).toThrow('never overwritten');
  expect(() => db.exec(`UPDATE issue_seal SET added = x'01'`)).toThrow('never overwritten');
});
