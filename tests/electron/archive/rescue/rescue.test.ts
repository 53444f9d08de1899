import { copyFileSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../core/base/random.ts';
import type { Archive } from '../../../../electron/archive/archive.ts';
import { openArchive } from '../../../../electron/archive/open.ts';
import { rescueArchive } from '../../../../electron/archive/rescue/rescue.ts';
import { generatedWells } from '../manyWells.ts';
import {
  countingWorld,
  freshFolder,
  openFresh,
  record,
  retype,
  revise,
  valueOf,
} from '../sample.ts';

const world = countingWorld();
const pageSize = 4096;
const jpeg = new Uint8Array(20_000).map((_, at) => (at * 7) % 251);

/** A record that needs several pages, as those of real wells do. */
const long = (notes: string) => ({ ...record, notes: `${notes} ${'long words '.repeat(900)}` });

/** Everything that an archive can hold, of which the rescue is to lose nothing. */
function fullArchive(): Archive {
  const archive = openFresh();
  for (const [at, well] of generatedWells(300).entries()) valueOf(archive.create(`w${at}`, well));
  valueOf(archive.create('a', long('first')));
  valueOf(revise(archive, 'a', long('second')));
  valueOf(revise(archive, 'a', long('third')));
  const typed = { ...record, identity: { number: 'KA-013' }, notes: 'only typed' };
  valueOf(retype(archive, 'w1', typed));
  valueOf(archive.bin.put('w2'));
  valueOf(archive.attach({ mediaType: 'image/jpeg', bytes: jpeg }));
  valueOf(archive.practices.put('own', JSON.stringify({ id: 'own', scope: 'ours' })));
  valueOf(archive.guidelines.put('ours', JSON.stringify({ id: 'ours', parameters: [] })));
  valueOf(archive.templates.put('office', JSON.stringify({ name: ['Office'], logos: [] })));
  return archive;
}

function rescued(file: string) {
  const target = path.join(freshFolder(), 'Rescued.borefolio');
  const told = valueOf(rescueArchive(file, target, world));
  return { told, archive: valueOf(openArchive(target, world)) };
}

/** A file of the archive's with some of its pages written over. */
function spoiled(file: string, pages: readonly number[]): string {
  const bytes = readFileSync(file);
  for (const page of pages) bytes.fill(0xa5, (page - 1) * pageSize, page * pageSize);
  const copy = path.join(freshFolder(), 'Spoiled.borefolio');
  writeFileSync(copy, bytes);
  return copy;
}

/** The file of a full archive, closed, so that all of it is in one file. */
function fullFile(): string {
  const archive = fullArchive();
  archive.close();
  return archive.file;
}

describe('an archive that is whole', () => {
  it('comes out of the rescue with all that it held, its chains as they were', () => {
    const source = valueOf(openArchive(fullFile(), world));
    const { told, archive } = rescued(source.file);
    expect(told).toMatchObject({ wells: 301, revisions: 303, remarks: [], unknown: 0 });
    expect(told).toMatchObject({ files: 1, changedFiles: 0, typed: 1 });
    expect(valueOf(archive.list())).toEqual(
      valueOf(source.list()).map((one) => ({ ...one, changedAt: expect.any(String) })),
    );
    expect(valueOf(archive.revisions('a'))).toEqual(valueOf(source.revisions('a')));
    expect(valueOf(archive.openRevision('a', 2)).document).toEqual(long('second'));
    expect(valueOf(archive.working('w1')).desk.record).toMatchObject({ notes: 'only typed' });
    expect(valueOf(archive.bin.list()).map(({ id }) => id)).toEqual(['w2']);
    expect(valueOf(archive.practices.list()).map(({ id }) => id)).toEqual(['own']);
    expect(valueOf(archive.guidelines.list()).map(({ id }) => id)).toEqual(['ours']);
    expect(valueOf(archive.templates.usual())?.name).toBe('office');
    expect(valueOf(archive.check())).toEqual({ revisions: 303, broken: [] });
    expect(valueOf(archive.list('termite')).map(({ id }) => id)).toContain('a');
    [source, archive].forEach((one) => one.close());
  });

  it('gives what stands in its write-ahead log alone', () => {
    const source = fullArchive();
    const copy = path.join(freshFolder(), 'Cut off.borefolio');
    for (const end of ['', '-wal']) copyFileSync(source.file + end, copy + end);
    source.close();
    const { told, archive } = rescued(copy);
    expect(told).toMatchObject({ wells: 301, revisions: 303, remarks: [] });
    archive.close();
  });
});

describe('an archive that is damaged', () => {
  it('gives everything but the list of tables when its first page is lost', () => {
    const { told, archive } = rescued(spoiled(fullFile(), [1]));
    expect(told).toMatchObject({ wells: 301, revisions: 303, files: 1, typed: 1, remarks: [] });
    expect(valueOf(archive.practices.list()).map(({ id }) => id)).toEqual(['own']);
    expect(valueOf(archive.check()).broken).toEqual([]);
    archive.close();
  });

  it('loses with any one page no more than what stood on it, and says which wells', () => {
    const file = fullFile();
    const pages = readFileSync(file).length / pageSize;
    const random = seededRandom(7);
    for (let trial = 0; trial < 25; trial += 1) {
      const { told, archive } = rescued(spoiled(file, [1 + Math.floor(random() * pages)]));
      // 300 small records lie about six to a page, with others of their size beside them.
      expect(told.wells).toBeGreaterThan(301 - 25);
      expect(told.revisions + told.remarks.length).toBeGreaterThanOrEqual(301 - 25);
      expect(valueOf(archive.check())).toEqual({ revisions: told.revisions, broken: [] });
      archive.close();
    }
  });

  it('gives what stands before the place where it was cut off', () => {
    const file = fullFile();
    const pages = readFileSync(file).length / pageSize;
    truncateSync(file, Math.floor(pages / 2) * pageSize + 1000);
    const { told, archive } = rescued(file);
    expect(told.wells).toBeGreaterThan(50);
    expect(valueOf(archive.check()).broken).toEqual([]);
    archive.close();
  });

  it('stands a revision whose forerunner is lost in a new chain, and says so', () => {
    const source = fullArchive();
    source.close();
    const bytes = readFileSync(source.file);
    // The text of the second revision, wherever its pages lie.
    const words = Buffer.from('second long words');
    for (let at = bytes.indexOf(words); at >= 0; at = bytes.indexOf(words, at + 1))
      bytes.fill(0, at - 4, at);
    writeFileSync(source.file, bytes);
    const { told, archive } = rescued(source.file);
    expect(told.remarks.map(({ id }) => id)).toEqual(['a', 'a']);
    expect(told.remarks[0]!.sentence).toContain('revision 3');
    expect(told.remarks[1]!.sentence).toContain('1 of its 3 revisions');
    expect(valueOf(archive.openRevision('a', 2)).document).toEqual(long('third'));
    expect(valueOf(archive.check()).broken).toEqual([]);
    archive.close();
  });

  it('leaves out a photo that is no longer what was kept', () => {
    const file = fullFile();
    const bytes = readFileSync(file);
    bytes[bytes.indexOf(Buffer.from(jpeg.subarray(0, 64))) + 5]! ^= 1;
    writeFileSync(file, bytes);
    const { told, archive } = rescued(file);
    expect(told).toMatchObject({ files: 0, changedFiles: 1, wells: 301 });
    archive.close();
  });
});

describe('the rescue', () => {
  it('never writes over a file, and leaves none where it found nothing', () => {
    const file = fullFile();
    expect(rescueArchive(file, file, world)).toMatchObject({ error: { code: 'fileExists' } });
    const noise = path.join(freshFolder(), 'Noise.borefolio');
    writeFileSync(noise, 'no wells here '.repeat(5000));
    const target = path.join(freshFolder(), 'Rescued.borefolio');
    expect(rescueArchive(noise, target, world)).toMatchObject({ error: { code: 'nothingFound' } });
    expect(rescueArchive(`${noise}x`, target, world)).toMatchObject({ error: { code: 'noFile' } });
    expect(valueOf(openArchive(target, world)).count()).toEqual({ ok: true, value: 0 });
  });
});
