import { expect, it } from 'vitest';
import { ownFolder, type } from './typed.ts';

interface Line {
  readonly state: string;
  readonly depthM?: number;
}

async function demoFolder(): Promise<string> {
  const folder = ownFolder();
  await type(folder, ['demo-archive', 'demo.borefolio']);
  return folder;
}

it('borefolio find lists wells by words and filters, counts them, and writes a line of JSON each', async () => {
  const folder = await demoFolder();
  const find = (...typed: string[]) => type(folder, ['find', 'demo.borefolio', ...typed]);
  const all = await find('--count');
  expect(all).toMatchObject({ code: 0, out: [expect.stringMatching(/^\d+$/)] });
  const lines = (await find('--json')).out.map((line) => JSON.parse(line) as Line);
  expect(lines).toHaveLength(Number(all.out[0]));
  const dry = lines.filter(({ state }) => state === 'dry').length;
  expect((await find('--state', 'dry', '--count')).out).toEqual([String(dry)]);
  expect((await find('tumaŋgué', 'KV-25-017')).out).toEqual([
    expect.stringMatching(/^KV-25-017 .*58\.8 m$/),
  ]);
  const deep = lines.filter(({ depthM = 0 }) => depthM >= 45).length;
  expect((await find('--depth-from', '45')).out).toHaveLength(deep);
  expect((await find('nowhere')).out).toEqual([]);
});

it('borefolio find says what it did not understand', async () => {
  const folder = await demoFolder();
  const find = (...typed: string[]) => type(folder, ['find', ...typed]);
  expect(await find()).toMatchObject({ code: 2, err: [expect.stringContaining('which archive')] });
  const wet = await find('demo.borefolio', '--state', 'wet');
  expect(wet).toMatchObject({ code: 2, err: [expect.stringContaining('laidOut, drilled')] });
  const deep = await find('demo.borefolio', '--depth-from', 'deep');
  expect(deep).toMatchObject({ code: 2, err: [expect.stringContaining('--depth-from takes')] });
  expect(await find('none.borefolio')).toMatchObject({ code: 1 });
});
