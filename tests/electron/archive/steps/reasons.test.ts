import { hash } from 'node:crypto';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { chainStart } from '../../../../electron/archive/chain.ts';
import { checkChains } from '../../../../electron/archive/check.ts';
import type { WriteHandle } from '../../../../electron/archive/handles.ts';
import { reasons } from '../../../../electron/archive/steps/0100-reasons.ts';
import { steps } from '../../../../electron/archive/steps/list.ts';
import { takeSteps } from '../../../../electron/archive/steps/take.ts';
import { openFresh, record, retype, valueOf } from '../sample.ts';

it('the step to reasons leaves older chains whole', () => {
  const db = new Database(':memory:') as unknown as WriteHandle;
  takeSteps(
    db,
    steps.filter(({ number }) => number < reasons.number),
  );
  // As it was hashed before anybody could say who and why.
  const link = ['a', 1, '2025-03-01T08:00:00.000Z', '{}'] as const;
  const hashed = hash('sha256', JSON.stringify([chainStart, ...link]));
  db.exec(`INSERT INTO well (seq, id, number, name, district, village, state, revision, changed_at)
    VALUES (1, 'a', 'KA-1', '', '', '', '', 1, '')`);
  db.prepare(
    'INSERT INTO revision (well_id, number, changed_at, record, hash) VALUES (?, ?, ?, ?, ?)',
  ).run(...link, hashed);
  takeSteps(db, [reasons]);
  expect(checkChains(db)).toEqual({ revisions: 1, broken: [] });
});

it('who made a revision and why stands in its history, and in the chain', () => {
  const archive = openFresh();
  valueOf(archive.create('a', record, { author: 'Sena Abalo', reason: 'from the field book' }));
  const { edit } = valueOf(retype(archive, 'a', { ...record, notes: 'later' }));
  valueOf(archive.save('a', edit, { author: 'Kofi Denou' }));
  const told = valueOf(archive.revisions('a')).map(({ author, reason }) => [author, reason]);
  expect(told).toEqual([
    ['Sena Abalo', 'from the field book'],
    ['Kofi Denou', ''],
  ]);
  expect(valueOf(archive.check()).broken).toEqual([]);
  archive.close();

  const db = new Database(archive.file);
  db.exec('DROP TRIGGER revision_is_written_once');
  for (const [column, value] of [
    ['author', ''],
    ['reason', 'another reason'],
  ]) {
    const before = db.prepare(`SELECT ${column} FROM revision WHERE number = 1`).pluck().get();
    const set = db.prepare(`UPDATE revision SET ${column} = ? WHERE number = 1`);
    set.run(value);
    expect(checkChains(db).broken).toMatchObject([{ revision: 1 }]);
    set.run(before);
  }
  expect(checkChains(db).broken).toEqual([]);
  db.close();
});
