import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import { goThroughAll } from './manyWells.ts';
import { openFresh, record, retype, revise, valueOf } from './sample.ts';

let archive: Archive;

beforeEach(() => {
  archive = openFresh();
  valueOf(archive.create('a', record));
  valueOf(revise(archive, 'a', { ...record, notes: 'second' }));
  valueOf(archive.create('b', { ...record, identity: { number: 'KA-013' } }));
});

const listed = () => valueOf(archive.list()).map(({ id }) => id);
const binned = () => valueOf(archive.bin.list()).map(({ id }) => id);

describe('a well in the bin', () => {
  beforeEach(() => valueOf(archive.bin.put('a')));

  it('is in no list, search, map or count', () => {
    goThroughAll(archive);
    expect(listed()).toEqual(['b']);
    expect(valueOf(archive.list('market')).map(({ id }) => id)).toEqual(['b']);
    expect(valueOf(archive.count())).toBe(1);
    expect(valueOf(archive.lists.count({ search: 'KA-012' }))).toBe(0);
    expect(valueOf(archive.lists.values()).states).toEqual([{ value: '', wells: 1 }]);
  });

  it('is found neither by its id nor by its number, until it is put back', () => {
    const known = () => [valueOf(archive.isListed('a')), valueOf(archive.numbered('KA-012'))];
    expect(known()).toEqual([false, []]);
    valueOf(archive.bin.putBack('a'));
    expect(known()).toEqual([true, ['a']]);
    expect(valueOf(archive.isListed('c'))).toBe(false);
  });

  it('is listed there with what goes with it', () => {
    expect(valueOf(archive.bin.list())).toEqual([
      {
        id: 'a',
        number: 'KA-012',
        name: 'Lémo school',
        village: 'Lémo',
        district: 'Kalo',
        revisions: 2,
        binnedAt: expect.stringMatching(/^2025-03-01T08:/),
      },
    ]);
  });

  it('keeps its chain whole, and its record can be read', () => {
    expect(valueOf(archive.check())).toEqual({ revisions: 3, broken: [] });
    expect(valueOf(archive.open('a')).revision).toBe(2);
  });

  it('is put back as it was', () => {
    valueOf(archive.bin.putBack('a'));
    expect([listed(), binned()]).toEqual([['a', 'b'], []]);
    expect(valueOf(archive.list('termite')).map(({ id }) => id)).toContain('a');
  });

  it('keeps its moment when it is put there twice, and comes after one put in later', () => {
    const [before] = valueOf(archive.bin.list());
    valueOf(archive.bin.put('a'));
    valueOf(archive.bin.put('b'));
    expect(valueOf(archive.bin.list())[1]).toEqual(before);
    expect(binned()).toEqual(['b', 'a']);
  });

  it('that nobody knows is refused', () => {
    expect(archive.bin.put('x')).toMatchObject({ error: { code: 'noSuchWell' } });
    expect(archive.bin.putBack('x')).toMatchObject({ error: { code: 'noSuchWell' } });
  });
});

describe('emptying the bin', () => {
  function left(table: string): number {
    const db = new Database(archive.file, { readonly: true });
    const count = db.prepare(`SELECT count(*) FROM ${table}`).pluck().get() as number;
    db.close();
    return count;
  }

  it('takes a well out with its revisions, working copy, edits and words', () => {
    valueOf(retype(archive, 'a', { ...record, notes: 'third' }));
    valueOf(archive.bin.put('a'));
    expect(valueOf(archive.bin.empty(['a']))).toBe(1);
    expect(binned()).toEqual([]);
    expect(archive.open('a')).toMatchObject({ error: { code: 'noSuchWell' } });
    const tables = ['well', 'revision', 'working', 'edit', 'well_search'];
    expect(tables.map(left)).toEqual([1, 1, 0, 0, 1]);
    expect(valueOf(archive.check())).toEqual({ revisions: 1, broken: [] });
    valueOf(archive.create('a', record));
    expect(listed()).toEqual(['a', 'b']);
  });

  it('leaves what is not in the bin, or was put back meanwhile', () => {
    valueOf(archive.bin.put('a'));
    valueOf(archive.bin.putBack('a'));
    expect(valueOf(archive.bin.empty(['a', 'b', 'x']))).toBe(0);
    expect(listed()).toEqual(['a', 'b']);
  });

  it('is the only way in which a revision goes, and goes for whole wells', () => {
    const db = new Database(archive.file);
    const goes = 'a revision goes only with its well, out of the bin';
    expect(() => db.exec("DELETE FROM revision WHERE well_id = 'a'")).toThrow(goes);
    expect(() => db.exec("DELETE FROM well WHERE id = 'a'")).toThrow();
    db.close();
    expect(valueOf(archive.check()).revisions).toBe(3);
  });
});
