import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { paperHashes } from '../../../../electron/archive/steps/0150-paper-hashes.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';
import { everyIssue } from '../../../../electron/archive/tables/issues.ts';

it('the step to hashes of papers leaves those alone that were issued before, their hash unknown', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < paperHashes.number),
  );
  db.exec(
    `INSERT INTO issue VALUES ('a', 1, 2, 'as-built A4', 'en', 'a.pdf', 'h', 'then', '[]', x'00')`,
  );
  takeSteps(db, [paperHashes]);
  expect(everyIssue(db)).toEqual([
    {
      wellId: 'a',
      number: 1,
      revision: 2,
      paper: 'as-built A4',
      languages: 'en',
      fileName: 'a.pdf',
      recordHash: 'h',
      issuedAt: 'then',
      freeMarks: [],
    },
  ]);
  expect(() => db.exec(`UPDATE issue SET pdf_hash = 'h'`)).toThrow('never overwritten');
});
