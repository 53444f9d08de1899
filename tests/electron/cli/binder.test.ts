import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { beforeEach, expect, it } from 'vitest';
import { run } from '../../../electron/cli/run.ts';
import { openFresh, valueOf } from '../archive/sample.ts';

let folder: string;
let complaints: string[];

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'borefolio-test-'));
  complaints = [];
  const archive = openFresh(path.join(folder, 'wells.borefolio'));
  valueOf(archive.create('a', { schemaVersion: 1, identity: { number: 'KA-1' } }));
  archive.close();
});

/** Ends with this code, after these complaints. */
async function ends(...args: readonly string[]) {
  const code = await run(['binder', 'wells.borefolio', ...args], {
    print: () => undefined,
    complain: (sentence) => void complaints.push(sentence),
    now: () => '2026-02-01T09:30:00.000Z',
    newId: () => 'id',
    settingsFile: path.join(folder, 'settings.json'),
    folder,
    askSecret: () => Promise.resolve(undefined),
    asksToStop: () => new Promise(() => undefined),
  });
  return [code, complaints.join('\n')];
}

it.each([
  [[], 'Say where to write'],
  [['-o', 'x.txt'], 'x.txt is neither a folder nor ends in .pdf'],
  [['--name', 'Yearly', '-o', 'x.pdf'], 'keeps no binder Yearly; it keeps none yet'],
  [['--name', 'a', '--wish', 'b', '-o', 'x.pdf'], 'not both'],
  [['--wish', 'gone.json', '-o', 'x.pdf'], 'There is no file gone.json'],
  [['--papers', 'asBuilt,letters', '-o', 'x.pdf'], '--papers takes some of'],
  [['--volume-pages', '3', '-o', 'x.pdf'], '--volume-pages 3 is no whole number from 10'],
  [['--workers', '3', '-o', 'x.pdf'], '--workers is 1 or 2'],
] as const)('what cannot be understood in %j is said', async (args, sentence) => {
  const [code, said] = await ends(...args);
  expect(code).toBe(2);
  expect(said).toContain(sentence);
});

it('a wish that is none is said with its place', async () => {
  writeFileSync(path.join(folder, 'wish.json'), '{"title": 3}');
  const [code, said] = await ends('--wish', 'wish.json', '-o', 'x.pdf');
  expect(code).toBe(1);
  expect(said).toContain('wish.json is no wish for a binder: title: ');
});

it('a choice that no well fits is said', async () => {
  const [code, said] = await ends('--district', 'Nowhere', '-o', 'x.pdf', '--quiet');
  expect([code, said]).toEqual([1, expect.stringContaining('No well fits the choice')]);
});
