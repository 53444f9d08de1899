import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Archive } from '../../../electron/archive/archive.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, openFresh, record, retype, revise, valueOf } from './sample.ts';

let mine: Archive;
let theirs: Archive;

beforeEach(() => {
  mine = openFresh();
  theirs = valueOf(openArchive(mine.file, countingWorld()));
});

afterEach(() => {
  mine.close();
  theirs.close();
});

describe('two programs on one archive', () => {
  it('see each other’s wells at once, in the list, the count and the search', () => {
    valueOf(mine.create('a', record));
    expect(valueOf(theirs.count())).toBe(1);
    expect(valueOf(theirs.list()).map(({ id }) => id)).toEqual(['a']);
    valueOf(theirs.create('b', { identity: { number: 'KA-020', name: 'Mill' } }));
    expect(valueOf(mine.list('mill')).map(({ id }) => id)).toEqual(['b']);
    expect(valueOf(mine.count())).toBe(2);
  });

  it('see each other’s newest revision, and go on from it', () => {
    valueOf(mine.create('a', record));
    valueOf(revise(theirs, 'a', { ...record, notes: 'theirs' }));
    const { revision, document } = valueOf(mine.open('a'));
    expect([revision, document]).toEqual([2, { ...record, notes: 'theirs' }]);
    expect(valueOf(revise(mine, 'a', { ...record, notes: 'mine' })).revision).toBe(3);
    expect(valueOf(theirs.revisions('a')).map((one) => one.revision)).toEqual([1, 2, 3]);
    expect(valueOf(theirs.check())).toEqual({ revisions: 3, broken: [] });
  });

  it('cannot edit over each other: the later is told, and finds what the other typed', () => {
    valueOf(mine.create('a', record));
    valueOf(retype(theirs, 'a', { ...record, notes: 'theirs' }));
    const late = mine.edit('a', { upon: 0, moves: [{ kind: 'edit', patch: [] }] });
    expect(late).toMatchObject({ ok: false, error: { code: 'staleEdit' } });
    expect(mine.save('a', 0)).toMatchObject({ error: { code: 'staleEdit' } });
    const { desk, edit } = valueOf(mine.working('a'));
    expect([edit, desk.record.notes]).toEqual([1, 'theirs']);
    expect(valueOf(mine.list())).toMatchObject([{ unrevised: true, revision: 1 }]);
  });

  it('are each told that the other changed the file, and not of their own changes', () => {
    const before = valueOf(mine.touched());
    valueOf(mine.create('a', record));
    expect(valueOf(mine.touched())).toBe(before);
    valueOf(retype(theirs, 'a', { ...record, notes: 'theirs' }));
    expect(valueOf(mine.touched())).not.toBe(before);
  });

  it('cannot both make a well of one id', () => {
    valueOf(mine.create('a', record));
    const late = theirs.create('a', { notes: 'another' });
    expect(late).toMatchObject({ ok: false, error: { code: 'wellExists' } });
    expect(valueOf(theirs.open('a')).document).toEqual(record);
  });

  it('go on reading while a third writes, and are told to wait with their own saving', () => {
    valueOf(mine.create('a', record));
    const third = new Database(mine.file);
    third.exec(`BEGIN IMMEDIATE; UPDATE well SET name = 'half done'`);
    expect(valueOf(mine.list())[0]?.name).toBe('Lémo school');
    const late = retype(mine, 'a', { ...record, notes: 'x' });
    third.exec('ROLLBACK');
    third.close();
    expect(late).toMatchObject({ ok: false, error: { code: 'busy' } });
    if (!late.ok) expect(late.error.sentence).toContain('nothing was saved');
    expect(valueOf(mine.open('a')).revision).toBe(1);
    expect(valueOf(revise(mine, 'a', { ...record, notes: 'x' })).revision).toBe(2);
  });
});
