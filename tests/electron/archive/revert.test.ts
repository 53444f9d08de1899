import { expect, it } from 'vitest';
import { openFresh, record, retype, revise, valueOf } from './sample.ts';

it('an older revision stands again as the next one, with who and why; none goes', () => {
  const archive = openFresh();
  valueOf(archive.create('a', record));
  valueOf(revise(archive, 'a', { ...record, notes: 'wrong' }));
  const said = { author: 'Sena Abalo', reason: 'notes of another well' };
  expect(valueOf(archive.revert('a', 1, said))).toMatchObject({ revision: 3, document: record });
  expect(valueOf(archive.revisions('a'))[2]).toMatchObject(said);
  expect(valueOf(archive.openRevision('a', 2)).document).toMatchObject({ notes: 'wrong' });
  expect(valueOf(archive.working('a')).desk.record).not.toHaveProperty('notes');
  expect(valueOf(archive.revert('a', 1)).revision).toBe(3);
  expect(valueOf(archive.check()).broken).toEqual([]);
});

it('no older revision stands again over what was typed and is in none, or in the bin', () => {
  const archive = openFresh();
  valueOf(archive.create('a', record));
  valueOf(revise(archive, 'a', { ...record, notes: 'second' }));
  valueOf(retype(archive, 'a', { ...record, notes: 'typed' }));
  expect(archive.revert('a', 1)).toMatchObject({ error: { code: 'typedSince' } });
  expect(valueOf(archive.working('a')).desk.record).toMatchObject({ notes: 'typed' });
  expect(archive.revert('a', 7)).toMatchObject({ error: { code: 'noSuchRevision' } });
  expect(archive.revert('x', 1)).toMatchObject({ error: { code: 'noSuchWell' } });
  const { edit } = valueOf(archive.working('a'));
  valueOf(archive.save('a', edit));
  valueOf(archive.bin.put('a'));
  expect(archive.revert('a', 1)).toMatchObject({ error: { code: 'wellInBin' } });
});
