import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { chainStart, linkHash } from '../../../../electron/archive/chain.ts';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { openArchive } from '../../../../electron/archive/open.ts';
import { logWords } from '../../../../electron/archive/steps/0140-log-words.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';
import { countingWorld, freshFolder, valueOf } from '../sample.ts';

/** An archive as it was before the step, with a well of one revision. */
function oldArchive(file: string, record: string): void {
  const db = new Database(file) as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < logWords.number),
  );
  const link = { wellId: 'a', number: 1, changedAt: 'then', record, author: '', reason: '' };
  db.exec(`INSERT INTO well (seq, id, number, name, district, village, state, revision, changed_at)
    VALUES (7, 'a', 'KA-1', '', '', '', '', 1, 'then')`);
  db.prepare(
    `INSERT INTO revision (well_id, number, record, changed_at, hash)
     VALUES (@wellId, @number, @record, @changedAt, @hash)`,
  ).run({ ...link, hash: linkHash(chainStart, link) });
  db.close();
}

it('wells from before the step are found by all their words as soon as they are opened', () => {
  const file = path.join(freshFolder(), 'Old.borefolio');
  const log = [{ from: 0, to: 3, material: 'laterite', colour: 'reddish', remarks: 'hard' }];
  const record = { identity: { number: 'KA-1' }, site: { region: 'North' }, log };
  oldArchive(file, JSON.stringify({ schemaVersion: 1, ...record }));
  const archive = valueOf(openArchive(file, countingWorld()));
  for (const word of ['ka-1', 'north', 'later', 'reddish', 'hard'])
    expect(valueOf(archive.list(word)).map(({ id }) => id)).toEqual(['a']);
  expect(valueOf(archive.list('sand'))).toEqual([]);
  expect(valueOf(archive.lists.values()).regions).toEqual([{ value: 'North', wells: 1 }]);
  expect(valueOf(archive.open('a'))).toMatchObject({ revision: 1, changedAt: 'then' });
  expect(valueOf(archive.check())).toEqual({ revisions: 1, broken: [] });
  archive.close();
});
