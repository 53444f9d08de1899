import { copyFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import type { CallName, Gives, Takes } from '../../../core/contract/calls.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, openFresh, record, revise, valueOf } from '../archive/sample.ts';
import { freshService } from './sample.ts';

/** A service on an archive, with another one beside its file that went on by itself. */
async function serviceWithOther() {
  const archive = openFresh();
  valueOf(archive.create('a', record));
  await archive.copyTo(path.join(path.dirname(archive.file), 'North.borefolio'));
  const north = path.join(path.dirname(archive.file), 'North.borefolio');
  const other = valueOf(openArchive(north, countingWorld()));
  valueOf(revise(other, 'a', { ...record, site: { ...record.site, village: 'Béro' } }));
  valueOf(other.create('b', { ...record, identity: { number: 'KA-013' } }));
  other.close();
  const service = freshService(archive);
  const ask = async <N extends CallName>(name: N, args: Takes<N>): Promise<Gives<N>> =>
    valueOf(await service.call(name, args)) as Gives<N>;
  return { archive, service, ask };
}

const north = { place: 'beside', fileName: 'North.borefolio' } as const;

it('copies are made, listed and put back, and pages are told', async () => {
  const { archive, service, ask } = await serviceWithOther();
  const heard: string[] = [];
  service.onEvent(({ name }) => heard.push(name));
  const { fileName } = await ask('copies.make', {});
  valueOf(archive.create('late', record));
  const { backups, beside } = await ask('copies.list', {});
  expect(backups).toMatchObject([{ fileName, wells: 1 }]);
  expect(beside).toMatchObject([{ fileName: 'North.borefolio', wells: 2 }]);
  const { aside } = await ask('copies.restore', { fileName });
  expect(valueOf(archive.count())).toBe(1);
  expect((await ask('copies.list', {})).backups.map((one) => one.fileName)).toContain(aside);
  expect(heard).toContain('list.changed');
  archive.close();
});

it('another archive is looked at, compared side by side, and taken in', async () => {
  const { archive, ask } = await serviceWithOther();
  valueOf(revise(archive, 'a', { ...record, notes: 'here' }));
  expect(await ask('copies.look', north)).toMatchObject({
    wells: [
      { id: 'a', kind: 'apart', number: 'KA-012', village: 'Béro' },
      { id: 'b', kind: 'new', number: 'KA-013' },
    ],
    known: 0,
  });
  const beside = await ask('copies.compare', { ...north, id: 'a', language: 'en' });
  expect(beside.differences).toContainEqual(
    expect.objectContaining({ ours: 'Lémo', theirs: 'Béro' }),
  );
  const taken = await ask('copies.take', { ...north, choices: { a: 'ours' } });
  expect(taken).toEqual({ added: 1, continued: 0, joined: 1, left: 0, differing: [] });
  archive.close();
});

it('a file that lies elsewhere is not reached by its name', async () => {
  const { archive, service } = await serviceWithOther();
  copyFileSync(archive.file, path.join(path.dirname(archive.file), 'copy.txt'));
  const answer = await service.call('copies.look', { ...north, fileName: 'none.borefolio' });
  expect(answer).toMatchObject({ ok: false, error: { code: 'noFile' } });
  archive.close();
});
