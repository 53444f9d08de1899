import path from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { chainStart, linkHash } from '../../../../electron/archive/chain.ts';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { openArchive } from '../../../../electron/archive/open.ts';
import { plainWords } from '../../../../electron/archive/steps/0200-plain-words.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';
import { countingWorld, freshFolder, valueOf } from '../sample.ts';

/** An archive as it was before the step, with wells whose lines are up to date. */
function oldArchive(file: string, wells: number): void {
  const db = new Database(file) as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < plainWords.number),
  );
  const well = db.prepare(
    `INSERT INTO well (id, number, name, district, village, state, revision, changed_at,
       listed_by, errors, counted)
     VALUES (@wellId, @number, 'As listed', '', '', '', 1, 'then', 2, 3, 7)`,
  );
  const revision = db.prepare(
    `INSERT INTO revision (well_id, number, record, changed_at, hash)
     VALUES (@wellId, 1, @record, @changedAt, @hash)`,
  );
  db.transaction(() => {
    for (let at = 1; at <= wells; at += 1) {
      const record = JSON.stringify({
        ...{ schemaVersion: 1, identity: { number: `KA-${at}` } },
        ...{ site: { village: 'Lémo' }, log: [{ from: 0, to: 3, material: 'sand' }] },
      });
      const link = { wellId: `w${at}`, changedAt: 'then', record, author: '', reason: '' };
      well.run({ wellId: link.wellId, number: `KA-${at}` });
      revision.run({ ...link, hash: linkHash(chainStart, { ...link, number: 1 }) });
    }
  })();
  db.close();
}

it('wells from before the step are found by all their words, and keep lines and findings', () => {
  const file = path.join(freshFolder(), 'Old.borefolio');
  oldArchive(file, 3);
  const archive = valueOf(openArchive(file, countingWorld()));
  for (const word of ['l', 'le', 'lemo', 'k', 'sand', 'sable', 'areia'])
    expect(valueOf(archive.list(word)).map(({ id }) => id)).toEqual(['w1', 'w2', 'w3']);
  expect(valueOf(archive.list('ka-2')).map(({ id }) => id)).toEqual(['w2']);
  const [row] = valueOf(archive.lists.find({}, { by: 'number' }, { from: 0, limit: 1 }));
  expect(row).toMatchObject({ name: 'As listed', findings: { errors: 3 } });
  archive.close();
});

it('how far the words are is told on the way, and an archive that is up to date tells nothing', () => {
  const file = path.join(freshFolder(), 'Old.borefolio');
  oldArchive(file, 2500);
  const told: number[][] = [];
  const world = { ...countingWorld(), onBringing: (...far: [number, number]) => told.push(far) };
  valueOf(openArchive(file, world)).close();
  expect(told).toEqual([
    [0, 2500],
    [1000, 2500],
    [2000, 2500],
  ]);
  valueOf(openArchive(file, world)).close();
  expect(told.length).toBe(3);
});

it('words that a stop left unwritten are written by the next opening', () => {
  const file = path.join(freshFolder(), 'Old.borefolio');
  oldArchive(file, 1500);
  const stop = () => {
    throw new Error('the plug is pulled');
  };
  const stopping = { ...countingWorld(), onBringing: (done: number) => done > 0 && stop() };
  expect(() => openArchive(file, stopping)).toThrow('the plug is pulled');
  const archive = valueOf(openArchive(file, countingWorld()));
  expect(valueOf(archive.lists.count({ search: 'lemo' }))).toBe(1500);
  archive.close();
});
