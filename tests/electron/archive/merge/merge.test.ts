import { copyFileSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Archive } from '../../../../electron/archive/archive.ts';
import type { MergeChoices } from '../../../../electron/archive/merge/take.ts';
import { openArchive } from '../../../../electron/archive/open.ts';
import {
  countingWorld,
  freshFolder,
  openFresh,
  record,
  retype,
  revise,
  valueOf,
} from '../sample.ts';

const said = { author: 'Sena Abalo', name: 'Kalo north' };
const withNumber = (number: string, parts: object = {}) => ({
  ...record,
  identity: { ...record.identity, number },
  ...parts,
});

/** An archive, and a copy of its file that goes its own way from here. */
function twoOf(archive: Archive): readonly [ours: Archive, theirs: Archive] {
  archive.close();
  const other = path.join(freshFolder(), 'Other.borefolio');
  copyFileSync(archive.file, other);
  const open = (file: string) => valueOf(openArchive(file, countingWorld()));
  return [open(archive.file), open(other)];
}

function shared(): readonly [ours: Archive, theirs: Archive] {
  const archive = openFresh();
  valueOf(archive.create('a', withNumber('KA-1')));
  valueOf(archive.create('b', withNumber('KA-2')));
  return twoOf(archive);
}

function take(ours: Archive, theirs: Archive, choices: MergeChoices = {}) {
  return valueOf(ours.merging.take(theirs.file, choices, said));
}

function notesOf(archive: Archive, id: string): string[] {
  return valueOf(archive.revisions(id)).map(({ revision }) => {
    const { document } = valueOf(archive.openRevision(id, revision));
    return (document as { notes?: string }).notes ?? '';
  });
}

/** What there is to see in an archive, so that two sights can be compared. */
function sightOf(archive: Archive) {
  return valueOf(archive.list()).map((well) => [well, valueOf(archive.revisions(well.id))]);
}

function closeAll(...archives: Archive[]): void {
  for (const archive of archives) archive.close();
}

describe('taking another archive in', () => {
  it('brings new wells with their whole chains, and later revisions of known ones', () => {
    const [ours, theirs] = shared();
    valueOf(theirs.create('c', withNumber('KA-3')));
    valueOf(revise(theirs, 'c', withNumber('KA-3', { notes: 'mended' })));
    valueOf(revise(theirs, 'a', withNumber('KA-1', { notes: 'went on' })));
    expect(valueOf(ours.merging.look(theirs.file))).toMatchObject({
      steps: [
        { kind: 'later', id: 'a' },
        { kind: 'new', id: 'c' },
      ],
      known: 1,
    });
    expect(take(ours, theirs)).toMatchObject({ added: 1, continued: 1, joined: 0, left: [] });
    for (const id of ['a', 'c'])
      expect(valueOf(ours.revisions(id))).toEqual(valueOf(theirs.revisions(id)));
    expect(valueOf(ours.list('mended')).map(({ id }) => id)).toEqual(['c']);
    expect(valueOf(ours.check()).broken).toEqual([]);
    closeAll(ours, theirs);
  });

  it('twice changes nothing, and leaves the other file as it is', () => {
    const [ours, theirs] = shared();
    valueOf(theirs.create('c', withNumber('KA-3')));
    valueOf(revise(theirs, 'a', withNumber('KA-1', { notes: 'theirs' })));
    valueOf(revise(ours, 'a', withNumber('KA-1', { notes: 'ours' })));
    valueOf(theirs.create('z', withNumber('KA-2', { notes: 'alike' })));
    valueOf(retype(theirs, 'b', withNumber('KA-2', { notes: 'typed there' })));
    const bytes = readFileSync(theirs.file);
    const choices = { a: 'ours', z: 'theirs' } as const;
    expect(take(ours, theirs, choices)).toMatchObject({ added: 1, continued: 1, joined: 2 });
    const once = sightOf(ours);
    const again = take(ours, theirs, choices);
    expect(again).toMatchObject({ added: 0, continued: 0, joined: 0, left: [] });
    expect(sightOf(ours)).toEqual(once);
    expect(readFileSync(theirs.file).equals(bytes)).toBe(true);
    expect(valueOf(ours.check()).broken).toEqual([]);
    closeAll(ours, theirs);
  });

  it('asks where both went on, and keeps what either did', () => {
    for (const [choice, notes] of [
      ['ours', ['', 'ours', 'theirs 1', 'theirs 2', 'ours']],
      ['theirs', ['', 'ours', 'theirs 1', 'theirs 2']],
    ] as const) {
      const [ours, theirs] = shared();
      valueOf(revise(ours, 'a', withNumber('KA-1', { notes: 'ours' })));
      valueOf(revise(theirs, 'a', withNumber('KA-1', { notes: 'theirs 1' })));
      valueOf(revise(theirs, 'a', withNumber('KA-1', { notes: 'theirs 2' })));
      const sight = valueOf(ours.merging.look(theirs.file));
      expect(sight.steps).toEqual([{ kind: 'apart', id: 'a', shared: 1 }]);
      expect(valueOf(ours.merging.both(theirs.file, 'a'))).toMatchObject({
        ours: { revision: 2, document: { notes: 'ours' } },
        theirs: { revision: 3, document: { notes: 'theirs 2' } },
      });
      expect(take(ours, theirs)).toMatchObject({ joined: 0, left: [{ kind: 'apart' }] });
      expect(notesOf(ours, 'a')).toEqual(['', 'ours']);
      expect(take(ours, theirs, { a: choice })).toMatchObject({ joined: 1, left: [] });
      expect(notesOf(ours, 'a')).toEqual(notes);
      const [, , brought] = valueOf(ours.revisions('a'));
      expect(brought!.reason).toMatch(/^revision 2 of Kalo north, 2025-03-01/);
      expect(valueOf(ours.check()).broken).toEqual([]);
      closeAll(ours, theirs);
    }
  });

  it('asks of another id with the same number and place whether it is the same well', () => {
    const ours = openFresh();
    valueOf(ours.create('a', withNumber('KA-1')));
    const theirs = openFresh();
    valueOf(theirs.create('x', withNumber('KA-1', { notes: 'by another hand' })));
    const elsewhere = withNumber('KA-1', { site: { district: 'Dena', village: 'Lémo' } });
    valueOf(theirs.create('y', elsewhere));
    const { steps } = valueOf(ours.merging.look(theirs.file));
    expect(steps).toEqual([
      { kind: 'alike', id: 'x', ourId: 'a' },
      { kind: 'new', id: 'y' },
    ]);
    expect(take(ours, theirs)).toMatchObject({ added: 1, left: [{ id: 'x' }] });
    expect(take(ours, theirs, { x: 'theirs' })).toMatchObject({ joined: 1 });
    expect(notesOf(ours, 'a')).toEqual(['', 'by another hand']);
    expect(valueOf(ours.open('a')).document).toMatchObject({ identity: { id: 'a' } });
    expect(valueOf(ours.count())).toBe(2);
    closeAll(ours, theirs);
  });

  it('takes two that are alike as two wells where a person says so', () => {
    const ours = openFresh();
    valueOf(ours.create('a', withNumber('KA-1')));
    const theirs = openFresh();
    valueOf(theirs.create('x', withNumber('KA-1', { notes: 'the one beside it' })));
    expect(take(ours, theirs, { x: 'two' })).toMatchObject({ added: 1, left: [] });
    expect(valueOf(ours.count())).toBe(2);
    expect(take(ours, theirs)).toMatchObject({ added: 0, left: [] });
    closeAll(ours, theirs);
  });

  it('waits where something typed here is in no revision', () => {
    const [ours, theirs] = shared();
    valueOf(retype(ours, 'a', withNumber('KA-1', { notes: 'half typed' })));
    valueOf(revise(theirs, 'a', withNumber('KA-1', { notes: 'went on' })));
    expect(take(ours, theirs)).toMatchObject({ left: [{ kind: 'typing', id: 'a' }] });
    expect(valueOf(ours.working('a')).desk.record).toMatchObject({ notes: 'half typed' });
    expect(notesOf(ours, 'a')).toEqual(['']);
    closeAll(ours, theirs);
  });

  it('brings files and practices, and says which stand otherwise here', () => {
    const [ours, theirs] = shared();
    const bytes = new Uint8Array([1, 2, 3]);
    const hash = valueOf(theirs.attach({ mediaType: 'image/jpeg', bytes }));
    valueOf(theirs.practices.put('north', '{"scope":"north"}'));
    valueOf(theirs.practices.put('both', '{"scope":"theirs"}'));
    valueOf(ours.practices.put('both', '{"scope":"ours"}'));
    expect(take(ours, theirs).differing).toEqual(['both']);
    expect([...valueOf(ours.attachment(hash)).bytes]).toEqual([...bytes]);
    expect(valueOf(ours.practices.list()).map(({ json }) => json)).toEqual([
      '{"scope":"ours"}',
      '{"scope":"north"}',
    ]);
    closeAll(ours, theirs);
  });

  it('brings templates, and leaves it to this archive which one is its usual one', () => {
    const [ours, theirs] = shared();
    valueOf(ours.templates.put('office', '{"name":["Ours"],"logos":[]}'));
    valueOf(theirs.templates.put('office', '{"name":["Theirs"],"logos":[]}'));
    valueOf(theirs.templates.put('north', '{"name":["North"],"logos":[]}'));
    valueOf(theirs.templates.choose('north'));
    expect(take(ours, theirs).differing).toEqual(['office']);
    const kept = valueOf(ours.templates.list()).map(({ name, usual }) => [name, usual]);
    expect(kept).toEqual([
      ['north', false],
      ['office', true],
    ]);
    expect(valueOf(ours.templates.usual())?.json).toContain('Ours');
    closeAll(ours, theirs);
  });

  it('brings issued papers with their signatures, each once', () => {
    const [ours, theirs] = shared();
    const paper = (name: string) => ({
      ...{ wellId: 'a', revision: 1, paper: 'asBuilt A4', languages: 'en' },
      ...{ fileName: `${name}.pdf`, recordHash: '0'.repeat(64), freeMarks: [] },
      pdf: Buffer.from(name),
    });
    const { number } = valueOf(ours.issues.add(paper('one')));
    valueOf(theirs.issues.add(paper('one')));
    valueOf(theirs.issues.add(paper('two')));
    valueOf(theirs.issues.seal('a', 1, Buffer.from('one signed')));
    take(ours, theirs);
    take(ours, theirs);
    expect(valueOf(ours.issues.list('a')).map(({ fileName }) => fileName)).toEqual([
      'one.pdf',
      'two.pdf',
    ]);
    const signed = valueOf(ours.issues.pdf('a', number));
    expect(Buffer.from(signed).toString()).toBe('one signed');
    closeAll(ours, theirs);
  });

  it('is refused for the archive itself and for a file that is none', () => {
    const ours = openFresh();
    expect(ours.merging.look(ours.file)).toMatchObject({ error: { code: 'sameArchive' } });
    expect(ours.merging.look(`${ours.file}x`)).toMatchObject({ error: { code: 'noFile' } });
    ours.close();
  });
});
