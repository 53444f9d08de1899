import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import { generatedWells, wellLike } from './manyWells.ts';
import { openFresh, retype, revise, valueOf } from './sample.ts';

let archive: Archive;

beforeEach(() => {
  archive = openFresh();
});

/** Generated wells by the ids w0, w1 and so on. */
const wells = (count: number) =>
  generatedWells(count).map((document, at) => ({ id: `w${at}`, document }));

const said = { author: 'Adéwa Tonou', reason: 'imported from wells.csv' };

describe('wells that are brought in', () => {
  it('are all there, listed and found, each with who brought it and why', async () => {
    const brought = valueOf(await archive.bring(wells(120), said));
    expect(brought).toEqual({ created: 120, revised: 0, unchanged: 0 });
    expect(valueOf(archive.count())).toBe(120);
    expect(valueOf(archive.list('village')).length).toBe(120);
    expect(valueOf(archive.revisions('w7'))).toEqual([
      expect.objectContaining({ revision: 1, ...said }),
    ]);
    expect(valueOf(archive.check())).toEqual({ revisions: 120, broken: [] });
  });

  it('become next revisions of wells that are known, unless nothing changed', async () => {
    valueOf(archive.create('a', wellLike('KA-1')));
    valueOf(archive.create('b', wellLike('KA-2')));
    const changed = wellLike('KA-1', { notes: 'corrected' });
    const brought = await archive.bring([
      { id: 'a', document: changed },
      { id: 'b', document: wellLike('KA-2') },
      { id: 'c', document: wellLike('KA-3') },
    ]);
    expect(valueOf(brought)).toEqual({ created: 1, revised: 1, unchanged: 1 });
    expect(valueOf(archive.open('a'))).toMatchObject({ revision: 2, document: changed });
    expect(valueOf(archive.list('corrected')).map(({ id }) => id)).toEqual(['a']);
    expect(valueOf(archive.check()).broken).toEqual([]);
  });

  it('may bring their own history along', async () => {
    const past = [
      { id: 'a', document: wellLike('KA-1'), changedAt: '2020-05-01T00:00:00Z', author: 'First' },
      { id: 'a', document: wellLike('KA-2'), changedAt: '2021-05-01T00:00:00Z', reason: 'renamed' },
    ];
    valueOf(await archive.bring(past, { author: 'Importer' }));
    expect(valueOf(archive.revisions('a'))).toMatchObject([
      { changedAt: '2020-05-01T00:00:00Z', author: 'First' },
      { changedAt: '2021-05-01T00:00:00Z', author: 'Importer', reason: 'renamed' },
    ]);
  });

  it('reach a page that has one of them open as a newer edit', async () => {
    valueOf(archive.create('a', wellLike('KA-1')));
    valueOf(await archive.bring([{ id: 'a', document: wellLike('KA-1', { notes: 'new' }) }]));
    const working = valueOf(archive.working('a'));
    expect(working).toMatchObject({ edit: 1, unrevised: false, moves: [] });
    expect(working.desk.record).toMatchObject({ notes: 'new' });
    expect(archive.edit('a', { upon: 0, moves: [] })).toMatchObject({
      error: { code: 'staleEdit' },
    });
    expect(valueOf(revise(archive, 'a', wellLike('KA-9'))).revision).toBe(3);
  });

  it('never lay themselves over what was typed and is in no revision', async () => {
    valueOf(archive.create('a', wellLike('KA-1')));
    valueOf(retype(archive, 'a', wellLike('KA-1', { notes: 'typed' })));
    const brought = await archive.bring([...wells(3), { id: 'a', document: wellLike('KA-5') }]);
    expect(brought).toMatchObject({ error: { code: 'typedSince' } });
    expect(valueOf(archive.count())).toBe(1);
    expect(valueOf(archive.working('a')).desk.record).toMatchObject({ notes: 'typed' });
  });

  it('do not wake a well in the bin', async () => {
    valueOf(archive.create('a', wellLike('KA-1')));
    valueOf(archive.bin.put('a'));
    const brought = await archive.bring([{ id: 'a', document: wellLike('KA-5') }]);
    expect(brought).toMatchObject({ error: { code: 'wellInBin' } });
  });

  it('are not taken under an id that is not their own', async () => {
    const document = { identity: { id: 'other' } };
    await expect(archive.bring([{ id: 'a', document }])).rejects.toThrow('brought in as a');
    expect(valueOf(archive.create('a', {})).revision).toBe(1);
  });
});

describe('bringing wells in', () => {
  it('tells how far it is, and leaves nothing behind where it is stopped', async () => {
    const stop = new AbortController();
    const told: number[] = [];
    const onProgress = (done: number) => {
      told.push(done);
      if (done >= 100) stop.abort();
    };
    const brought = await archive.bring(wells(400), { onProgress, signal: stop.signal });
    expect(brought).toMatchObject({ error: { code: 'stopped' } });
    expect(told).toEqual([50, 100]);
    expect(valueOf(archive.count())).toBe(0);
    expect(valueOf(archive.list('village'))).toEqual([]);
    expect(valueOf(await archive.bring(wells(60))).created).toBe(60);
  });

  it('shows the archive as it was meanwhile, and keeps other changes out of it', async () => {
    valueOf(archive.create('a', wellLike('KA-1')));
    const seen: unknown[] = [];
    const onProgress = (done: number) => {
      if (done === 50) seen.push(archive.count(), archive.create('b', {}), archive.bring([]));
    };
    valueOf(await archive.bring(wells(60), { onProgress }));
    expect(seen.slice(0, 2)).toMatchObject([{ value: 1 }, { error: { code: 'bringing' } }]);
    expect(await seen[2]).toMatchObject({ error: { code: 'bringing' } });
    expect(valueOf(archive.create('b', {})).revision).toBe(1);
  });

  it('takes wells as they come, and none where their source fails', async () => {
    async function* source() {
      yield* wells(70);
      await Promise.reject(new Error('unplugged'));
    }
    await expect(archive.bring(source())).rejects.toThrow('unplugged');
    expect(valueOf(archive.count())).toBe(0);
  });
});
