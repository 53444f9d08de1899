import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { applyPatch, diff } from '../../../core/base/patch.ts';
import type { Desk, Move } from '../../../core/record/desk.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, openFresh, record, retype, revise, valueOf } from './sample.ts';

let archive: Archive;

beforeEach(() => {
  archive = openFresh();
  valueOf(archive.create('a', record));
});

const working = () => valueOf(archive.working('a'));

/** One letter after another into the notes, and a text that cannot be read. */
function typeThree() {
  const first: Move = { kind: 'edit', patch: [{ at: ['record', 'notes'], to: 'd' }] };
  const second: Move = { kind: 'amend', patch: [{ at: ['record', 'notes'], to: 'dr' }] };
  const odd: Move = { kind: 'edit', patch: [{ at: ['typed', 'log[0].to'], to: '3x' }] };
  return valueOf(archive.edit('a', { upon: 0, moves: [first, second, odd] }));
}

describe('a working copy', () => {
  it('starts as the newest revision’s record, with nothing typed', () => {
    const { base, desk, ...rest } = working();
    expect(base).toEqual({ record, typed: {} });
    expect(desk).toEqual(base);
    expect(rest).toEqual({
      moves: [],
      edit: 0,
      unrevised: false,
      changedAt: '2025-03-01T08:00:00.000Z',
    });
  });

  it('keeps each move, and what the moves led to', () => {
    const { edit, unrevised } = typeThree();
    expect([edit, unrevised]).toEqual([3, true]);
    const { base, desk, moves } = working();
    expect(base.record).toEqual(record);
    expect(desk).toEqual({ record: { ...record, notes: 'dr' }, typed: { 'log[0].to': '3x' } });
    expect(moves.map(({ kind }) => kind)).toEqual(['edit', 'amend', 'edit']);
    expect(moves.reduce<Desk>((now, { patch }) => applyPatch(now, patch), base)).toEqual(desk);
  });

  it('is there again after the file was closed, with all that was not part of the record', () => {
    typeThree();
    const before = working();
    archive.close();
    archive = valueOf(openArchive(archive.file, countingWorld()));
    expect(working()).toEqual(before);
  });

  it('makes no revision by itself, and leaves the revisions as they are', () => {
    typeThree();
    expect(valueOf(archive.revisions('a'))).toHaveLength(1);
    expect(valueOf(archive.open('a')).document).toEqual(record);
    expect(valueOf(archive.check())).toEqual({ revisions: 1, broken: [] });
  });

  it('becomes the next revision when asked, once', () => {
    const { edit } = typeThree();
    const saved = valueOf(archive.save('a', edit));
    expect(saved).toMatchObject({ revision: 2, document: { notes: 'dr' } });
    expect(valueOf(archive.save('a', edit)).revision).toBe(2);
    expect(valueOf(archive.check())).toEqual({ revisions: 2, broken: [] });
    expect(working()).toMatchObject({ edit: 3, unrevised: false, base: { record } });
  });

  it('is not ahead of the revision for a text that is not part of the record', () => {
    const odd: Move = { kind: 'edit', patch: [{ at: ['typed', 'log[0].to'], to: '3x' }] };
    expect(valueOf(archive.edit('a', { upon: 0, moves: [odd] })).unrevised).toBe(false);
    expect(valueOf(archive.save('a', 1)).revision).toBe(1);
  });

  it('is no longer ahead when what was typed was taken back', () => {
    typeThree();
    const { desk } = working();
    const back: Move = { kind: 'undo', patch: diff(desk, { ...desk, record }) };
    expect(valueOf(archive.edit('a', { upon: 3, moves: [back] })).unrevised).toBe(false);
  });

  it('is edited upon its newest edit only, and says which one that is', () => {
    typeThree();
    const late = archive.edit('a', { upon: 2, moves: [{ kind: 'edit', patch: [] }] });
    expect(late).toMatchObject({ ok: false, error: { code: 'staleEdit' } });
    if (!late.ok) expect(late.error.sentence).toMatch(/^Edit 3, made at 2025-03-01T08:01.*edit 2/);
    expect(archive.save('a', 2)).toMatchObject({ error: { code: 'staleEdit' } });
    expect(working().edit).toBe(3);
  });

  it('says so when there is no such well', () => {
    const lost = { error: { code: 'noSuchWell' } };
    expect(archive.working('x')).toMatchObject(lost);
    expect(archive.edit('x', { upon: 0, moves: [] })).toMatchObject(lost);
    expect(archive.leave('x', 0)).toMatchObject(lost);
    expect(archive.mark('x')).toMatchObject(lost);
  });

  it('does not take another well’s record, nor one that cannot be read, and keeps what it had', () => {
    const other = retype(archive, 'a', { ...record, identity: { id: 'b' } });
    expect(other).toMatchObject({ error: { code: 'otherWell' } });
    const newer = retype(archive, 'a', { schemaVersion: 999 });
    expect(newer).toMatchObject({ error: { code: 'recordTooNew' } });
    expect(working()).toMatchObject({ edit: 0, moves: [] });
  });

  it('throws at a patch of another document, and keeps nothing of it', () => {
    const patch = [{ at: ['record', 'log', 7, 'to'], to: 1 }];
    const moves: Move[] = [
      { kind: 'edit', patch: [{ at: ['record', 'notes'], to: 'x' }] },
      { kind: 'edit', patch },
    ];
    expect(() => archive.edit('a', { upon: 0, moves })).toThrow(RangeError);
    expect(working()).toMatchObject({ edit: 0, desk: { record } });
  });
});

describe('leaving a well', () => {
  it('lets the next opening start from what lies there, and the edits count on', () => {
    const { edit } = typeThree();
    valueOf(archive.leave('a', edit));
    const { base, desk, moves, ...rest } = working();
    expect([base, moves]).toEqual([desk, []]);
    expect(rest).toMatchObject({ edit: 3, unrevised: true });
    const more = valueOf(retype(archive, 'a', { ...record, notes: 'more' }));
    expect(more.edit).toBe(4);
    expect(working()).toMatchObject({ base: { record: { notes: 'dr' } }, moves: [{}] });
  });

  it('does nothing when somebody else has edited since', () => {
    typeThree();
    const before = working();
    valueOf(archive.leave('a', 2));
    expect(working()).toEqual(before);
  });

  it('does nothing to a well that was never edited', () => {
    valueOf(archive.leave('a', 0));
    expect(working()).toMatchObject({ edit: 0, moves: [] });
  });
});

describe('the list', () => {
  it('and the search follow what is typed, before there is a revision of it', () => {
    valueOf(retype(archive, 'a', { ...record, identity: { number: 'KA-777', name: 'Mill' } }));
    expect(valueOf(archive.list())).toMatchObject([
      { number: 'KA-777', revision: 1, unrevised: true },
    ]);
    expect(valueOf(archive.list('mill'))).toHaveLength(1);
    expect(valueOf(archive.list('lemo school'))).toHaveLength(0);
    valueOf(archive.save('a', 1));
    expect(valueOf(archive.list())).toMatchObject([{ revision: 2, unrevised: false }]);
  });

  it('of marks says how far each well is', () => {
    valueOf(archive.create('b', record));
    valueOf(retype(archive, 'a', { ...record, notes: 'x' }));
    expect(valueOf(archive.marks())).toEqual([
      { id: 'a', revision: 1, edit: 1, unrevised: true, changedAt: '2025-03-01T08:02:00.000Z' },
      { id: 'b', revision: 1, edit: 0, unrevised: false, changedAt: '2025-03-01T08:01:00.000Z' },
    ]);
    expect(valueOf(archive.mark('a'))).toMatchObject({ id: 'a', edit: 1 });
  });
});

describe('a working copy in the shape of an older version', () => {
  it('is opened anew in today’s shape, with all that was typed', () => {
    valueOf(retype(archive, 'a', { ...record, notes: 'typed' }));
    archive.close();
    const db = new Database(archive.file);
    db.exec(`UPDATE working SET desk = json_remove(desk, '$.record.schemaVersion')`);
    db.close();
    archive = valueOf(openArchive(archive.file, countingWorld()));
    const { base, desk, moves, edit } = working();
    expect([base, moves, edit]).toEqual([desk, [], 1]);
    expect(desk.record).toMatchObject({ schemaVersion: 1, notes: 'typed' });
    valueOf(revise(archive, 'a', { ...record, notes: 'later' }));
    expect(working()).toMatchObject({ base: { record: { notes: 'typed' } }, moves: [{}] });
  });
});
