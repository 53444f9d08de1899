import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { attachments } from '../../../../electron/archive/steps/0050-attachments.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';

function fileBefore(): WriteHandle {
  const db = new Database(':memory:') as unknown as WriteHandle;
  db.pragma('foreign_keys = ON');
  takeSteps(
    db,
    steps.filter(({ number }) => number < attachments.number),
  );
  return db;
}

describe('the step to attachments', () => {
  it('adds tables for files and copies and leaves the wells alone', () => {
    const db = fileBefore();
    db.exec(`INSERT INTO well (seq, id, number, name, district, village, state, revision, changed_at)
      VALUES (1, 'a', 'KA-1', '', '', '', '', 1, '')`);
    const before = db.prepare('SELECT * FROM well').all();
    expect(() => db.prepare('SELECT * FROM attachment')).toThrow('no such table');
    takeSteps(db, [attachments]);
    expect(db.prepare('SELECT * FROM well').all()).toEqual(before);
    expect(db.prepare('SELECT * FROM attachment').all()).toEqual([]);
    expect(db.prepare('SELECT * FROM print_copy').all()).toEqual([]);
    expect(db.pragma('user_version', { simple: true })).toBe(50);
  });

  it('keeps a file from being overwritten by SQL, and a copy from standing alone', () => {
    const db = fileBefore();
    takeSteps(db, [attachments]);
    db.exec(`INSERT INTO attachment VALUES ('h', 'image/png', 1, x'00', '')`);
    expect(() => db.exec(`UPDATE attachment SET bytes = x'01'`)).toThrow('never overwritten');
    const copyOf = (hash: string) =>
      db.exec(`INSERT INTO print_copy VALUES ('${hash}', 'image/jpeg', 1, 1, x'00')`);
    copyOf('h');
    expect(() => copyOf('other')).toThrow('FOREIGN KEY');
    expect(() => db.exec(`DELETE FROM attachment`)).toThrow('FOREIGN KEY');
  });
});
