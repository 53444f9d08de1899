import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { inOrder } from '../../../../electron/archive/steps/step.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';

function emptyFile(): WriteHandle {
  return new Database(':memory:') as unknown as WriteHandle;
}

const stepsUpTo = (number: number) => steps.filter((step) => step.number <= number);

const tablesOf = (db: WriteHandle) =>
  db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all();

describe('steps of the archive', () => {
  it('must rise and be numbered in tens', () => {
    const step = (number: number) => ({ number, name: 'x', sql: '' });
    expect(() => inOrder([step(10), step(10)])).toThrow('does not rise above 10');
    expect(() => inOrder([step(20), step(10)])).toThrow('does not rise above 20');
    expect(() => inOrder([step(15)])).toThrow('not numbered in tens');
    expect(inOrder([step(10), step(30)])).toHaveLength(2);
  });

  it('take a file from the step before to the next and keep its rows', () => {
    const db = emptyFile();
    takeSteps(db, steps.slice(0, 1));
    db.exec(`INSERT INTO well VALUES (1, 'a', 'KA-1', '', '', '', '', NULL, 1, '')`);
    expect(tablesOf(db)).not.toContain('well_search');
    takeSteps(db, steps);
    expect(tablesOf(db)).toContain('well_search');
    expect(db.prepare('SELECT id, depth_m FROM well').all()).toEqual([{ id: 'a', depth_m: null }]);
    expect(db.pragma('user_version', { simple: true })).toBe(steps.at(-1)!.number);
  });

  it('leave a file as it was when one fails in its midst', () => {
    const db = emptyFile();
    const bad = { number: 10, name: 'bad', sql: 'CREATE TABLE half (a); CREATE TABEL b (c);' };
    expect(() => takeSteps(db, [bad])).toThrow('syntax error');
    expect(tablesOf(db)).toEqual([]);
    expect(db.pragma('user_version', { simple: true })).toBe(0);
  });

  it('put a working copy beside an old file’s revisions, which are left as they are', () => {
    const db = emptyFile();
    takeSteps(db, stepsUpTo(20));
    db.exec(`INSERT INTO well VALUES (1, 'a', 'KA-1', '', '', '', '', NULL, 1, '');
      INSERT INTO revision VALUES ('a', 1, '{}', 'then', 'hash')`);
    takeSteps(db, stepsUpTo(30));
    expect(tablesOf(db)).toEqual(expect.arrayContaining(['working', 'edit']));
    expect(db.prepare('SELECT * FROM revision').all()).toEqual([
      { well_id: 'a', number: 1, record: '{}', changed_at: 'then', hash: 'hash' },
    ]);
    db.exec(`INSERT INTO working VALUES ('a', NULL, '{}', 1, 0, '');
      INSERT INTO edit VALUES ('a', 1, 'edit', '[]', '')`);
    expect(() => db.exec(`UPDATE edit SET patch = '{}'`)).toThrow('never overwritten');
  });

  it('make a revision that SQL cannot overwrite', () => {
    const db = emptyFile();
    takeSteps(db, stepsUpTo(30));
    db.exec(`INSERT INTO well VALUES (1, 'a', '', '', '', '', '', NULL, 1, '');
      INSERT INTO revision VALUES ('a', 1, '{}', '', '')`);
    expect(() => db.exec(`UPDATE revision SET record = '[]'`)).toThrow('never overwritten');
  });
});
