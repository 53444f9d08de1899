import { randomUUID } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { openArchive } from '../../../electron/archive/open.ts';
import { countingWorld, valueOf } from '../archive/sample.ts';
import { ownFolder, type as typeIn } from './typed.ts';

let folder: string;

const never = () => new Promise<void>(() => undefined);
const type = (typed: readonly string[], asksToStop = never) =>
  typeIn(folder, typed, { newId: randomUUID, asksToStop });

const write = (name: string, text: string | Uint8Array) =>
  writeFileSync(path.join(folder, name), text);

/** Number and revision of each well of the archive. */
function wells(): [string, number][] {
  const archive = valueOf(openArchive(path.join(folder, 'a.borefolio'), countingWorld()));
  const listed = valueOf(archive.list()).map(({ number, revision }) => [number, revision]);
  archive.close();
  return listed as [string, number][];
}

const log = 'Bore;From (m);To (m);Lithology\nW1;0;1,5;Sandy clay\nW1;1,5;4;Gravel\nW2;0;3;Sand\n';
const args = ['import', 'a.borefolio', 'log.csv'];

beforeEach(() => {
  folder = ownFolder();
  write('log.csv', log);
});

describe('borefolio import', () => {
  it('reads a table by its headings, once', async () => {
    expect(await type([...args, '--reason', 'Delivery of lot 3'])).toEqual({
      code: 0,
      out: ['2 wells new.', '2 wells added, 0 revised.'],
      err: [],
    });
    expect(await type(args)).toMatchObject({
      code: 0,
      out: ['2 wells known already.', '0 wells added, 0 revised.'],
    });
    const archive = valueOf(openArchive(path.join(folder, 'a.borefolio'), countingWorld()));
    const [{ id } = { id: '' }] = valueOf(archive.list());
    expect(valueOf(archive.revisions(id))).toMatchObject([{ reason: 'Delivery of lot 3' }]);
    expect(valueOf(archive.open(id)).document).toMatchObject({
      identity: { id, number: 'W1' },
      log: [
        { to: 1.5, material: 'clay', qualifiers: [{ material: 'sand' }], words: 'Sandy clay' },
        { to: 4, material: 'gravel' },
      ],
    });
    archive.close();
  });

  it('changes nothing in a dry run, and tells what would come as JSON', async () => {
    await type(['demo-archive', 'a.borefolio']);
    const before = wells();
    const { code, out } = await type([...args, '--dry-run', '--json']);
    expect(code).toBe(0);
    expect(JSON.parse(out.join('\n'))).toMatchObject({
      counts: { new: 2, same: 0, changed: 0, alike: 0 },
      wells: [
        { kind: 'new', number: 'W1', file: 'log.csv', line: 2 },
        { kind: 'new', number: 'W2', file: 'log.csv', line: 4 },
      ],
      troubles: [],
    });
    expect(wells()).toEqual(before);
    expect((await type(['import', 'none.borefolio', 'log.csv', '--dry-run'])).code).toBe(1);
    expect(existsSync(path.join(folder, 'none.borefolio'))).toBe(false);
  });

  it('leaves wells that are there unless it is told what to do with them', async () => {
    await type(args);
    write('log.csv', log.replace('Gravel', 'Boulders'));
    expect(await type(args)).toMatchObject({
      code: 1,
      out: [
        '1 wells known already.',
        '1 wells with the number of a well that is there.',
        '0 wells added, 0 revised.',
        '1 wells left as they are; see --known.',
      ],
    });
    expect(await type([...args, '--known', 'revise'])).toMatchObject({ code: 0 });
    expect(wells()).toEqual([
      ['W1', 2],
      ['W2', 1],
    ]);
    write('log.csv', log.replace('Gravel', 'Peat'));
    expect(await type([...args, '--known', 'add', '--quiet'])).toMatchObject({
      code: 0,
      out: [],
    });
    expect(wells().map(([number]) => number)).toEqual(['W1', 'W1', 'W2']);
  });

  it('names what does not come by file, line and column, and brings the rest', async () => {
    write('log.csv', `${log}W3;deep;4;Sand\n`);
    expect(await type(args)).toMatchObject({
      code: 1,
      err: [expect.stringMatching(/^log\.csv:5 From \(m\): "deep" is not a number/)],
    });
    expect(wells()).toHaveLength(2);
  });

  it('reads by a mapping where one is named, and records of the archive’s own form', async () => {
    write(
      'mapping.json',
      JSON.stringify({
        tables: [
          {
            kind: 'wells',
            file: 'odd.csv',
            well: 'A',
            fields: { 'identity.name': { column: 'B' } },
          },
        ],
      }),
    );
    write('odd.csv', 'A,B\nX-1,First\n');
    const demo = path.resolve(import.meta.dirname, '../../../demo-data/hand-drilled-32m.json');
    write('own.json', readFileSync(demo));
    const all = ['import', 'a.borefolio', 'odd.csv', 'own.json', '--mapping', 'mapping.json'];
    expect(await type(all)).toMatchObject({
      code: 0,
      out: ['2 wells new.', '2 wells added, 0 revised.'],
    });
    expect(await type(all)).toMatchObject({
      code: 0,
      out: ['2 wells known already.', '0 wells added, 0 revised.'],
    });
  });

  it('says what to do where headings tell nothing, a file is missing, or a word is wrong', async () => {
    write('odd.csv', 'A,B\nX-1,First\n');
    const odd = await type(['import', 'a.borefolio', 'odd.csv']);
    expect([odd.code, odd.err[0]]).toEqual([1, expect.stringContaining('--mapping FILE')]);
    expect((await type(['import', 'a.borefolio'])).code).toBe(2);
    expect((await type(['import', 'a.borefolio', 'none.csv'])).code).toBe(2);
    expect((await type([...args, '--known', 'all'])).code).toBe(2);
  });

  it('leaves nothing behind where it is stopped', async () => {
    const stopped = await type(args, () => Promise.resolve());
    expect([stopped.code, stopped.err[0]]).toEqual([1, expect.stringContaining('It was stopped')]);
    expect(wells()).toEqual([]);
  });

  it('tells a file that cannot be opened and brings the others', async () => {
    write('bad.xlsx', Uint8Array.from([0x50, 0x4b, 0x03, 0x04, 1, 2, 3]));
    const { code, err, out } = await type([...args, 'bad.xlsx']);
    expect(code).toBe(1);
    expect(err[0]).toMatch(/^bad\.xlsx:1: bad\.xlsx is not a whole workbook/);
    expect(out).toContain('2 wells added, 0 revised.');
  });
});
