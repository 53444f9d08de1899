import { existsSync, readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { readJson } from '../../../core/exchange/json/readJson.ts';
import { recordReaderFor } from '../../../core/exchange/readers.ts';
import { writtenFormats } from '../../../core/exchange/writtenFormats.ts';
import { ownFolder, type } from './typed.ts';

async function demoFolder(): Promise<string> {
  const folder = ownFolder();
  await type(folder, ['demo-archive', 'demo.borefolio']);
  return folder;
}

const fileIn = (folder: string, name: string) => ({
  name,
  bytes: readFileSync(path.join(folder, name)),
});

const asked = ['export', 'demo.borefolio'];

describe('borefolio export', () => {
  it.each(writtenFormats)('writes the wells of an archive as %s', async (format) => {
    const folder = await demoFolder();
    const { code, out } = await type(folder, [...asked, '-f', format, '-o', 'out', '--json']);
    expect(code).toBe(0);
    const told = JSON.parse(out.join('\n')) as { wells: number; files: string[] };
    expect(readdirSync(path.join(folder, 'out')).sort()).toEqual(told.files.toSorted());
    expect(told.wells).toBeGreaterThan(5);
    const reader = recordReaderFor(fileIn(path.join(folder, 'out'), told.files[0]!));
    const isTable = format === 'csv' || format === 'xlsx';
    expect(reader?.format).toBe(isTable ? undefined : format === 'jsonl' ? 'json' : format);
  });

  it('gives the same wells to another archive, by a file that is named', async () => {
    const folder = await demoFolder();
    const { code } = await type(folder, [...asked, '-f', 'jsonl', '-o', 'all.jsonl', '--quiet']);
    expect(code).toBe(0);
    const read = readJson(fileIn(folder, 'all.jsonl'));
    if (!read.ok) throw new Error(read.error.sentence);
    const { wells, troubles } = read.value;
    expect(troubles).toEqual([]);
    const numbers = wells.map(({ record }) => record.identity?.number);
    expect(numbers).toEqual(numbers.toSorted());
  });

  it('tells what is lost in a table and on the screen', async () => {
    const folder = await demoFolder();
    const { out } = await type(folder, [...asked, '-f', 'ags', '-o', 'out/']);
    expect(out[0]).toMatch(/^\d+ wells in demo\.ags, demo-losses\.csv$/);
    expect(out.join('\n')).toContain('bore.fluid: AGS 4 has no place for it. (8 wells, first ');
    const table = fileIn(path.join(folder, 'out'), 'demo-losses.csv').bytes.toString();
    expect(table.split('\r\n')[0]).toBe('well,field,what became of it');
    expect(table.split('\r\n').length).toBeGreaterThan(20);
    const json = await type(folder, [...asked, '-f', 'json', '-o', 'exact']);
    expect(json.out[0]).toMatch(/^\d+ wells in demo\.json$/);
    expect(existsSync(path.join(folder, 'exact', 'demo-losses.csv'))).toBe(false);
  });

  it('leaves out what the filters do, and writes the same bytes each time', async () => {
    const folder = await demoFolder();
    const dry = await type(folder, [...asked, '-f', 'jsonl', '-o', 'dry.jsonl', '--state', 'dry']);
    expect(dry.out[0]).toMatch(/^1 wells/);
    await type(folder, [...asked, '-f', 'gwml', '-o', 'one', '--quiet']);
    await type(folder, [...asked, '-f', 'gwml', '-o', 'two', '--quiet']);
    const bytes = (of: string) => fileIn(path.join(folder, of), 'demo.xml').bytes;
    expect(bytes('one').equals(bytes('two'))).toBe(true);
  });

  it.each([
    [['-o', 'out'], 'which format'],
    [['-f', 'pdf', '-o', 'out'], 'which format'],
    [['-f', 'ags'], 'where to write'],
    [['-f', 'ags', '-o', 'out', '--state', 'broken'], '--state broken'],
    [['-f', 'ags', '-o', 'out', '--from', 'long ago'], 'no year'],
  ])('says what %j lacks', async (options, word) => {
    const { code, err } = await type(await demoFolder(), [...asked, ...options]);
    expect(code).toBe(2);
    expect(err[0]).toContain(word);
  });
});
