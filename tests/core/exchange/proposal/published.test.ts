import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { proposeMapping } from '../../../../core/exchange/proposal/propose.ts';
import { readSources } from '../../../../core/exchange/tables/readTables.ts';
import { sourcesOfFile } from '../../../../core/exchange/tables/source.ts';

/** What comes of a published table by what its headings and cells alone say. */
async function read(name: string) {
  const file = path.join(import.meta.dirname, '../../../data/openwashdata', name);
  const sources = await sourcesOfFile({ name, bytes: readFileSync(file) });
  const mapping = sources.ok ? proposeMapping(sources.value) : undefined;
  if (!sources.ok || !mapping) throw new Error(`${name}: nothing is proposed`);
  return readSources(sources.value, mapping);
}

test('borehole records of Uganda, with NA for what nobody knows', async () => {
  const { records, troubles } = await read('ugabore.csv');
  expect(records).toHaveLength(18);
  expect(records[0]).toMatchObject({
    identity: { number: '850' },
    site: { village: 'Kiduula', users: 120 },
    bore: { depthReached: 139.23 },
    levels: [{ reading: 17.5, datum: 'ground' }],
  });
  const silent = records.find(({ identity }) => identity?.number === '1476a');
  expect(silent).toMatchObject({ site: { users: 640 } });
  expect([silent?.bore, silent?.levels]).toEqual([undefined, undefined]);
  expect(troubles).toMatchObject([{ line: 18, reason: { code: 'saidOtherwise' }, kept: true }]);
});

test('levels of loggers in Malawi, of points that a name alone tells apart', async () => {
  const { records, troubles } = await read('mwgroundwaterdata.csv');
  expect(troubles).toEqual([]);
  expect(records.map(({ identity, levels }) => [identity?.number, levels?.length])).toEqual([
    ['Balaka Water Office', 4],
    ['Chidoole Primary School', 3],
    ['Chikwawa Post Office', 2],
  ]);
  expect(records[0]!.levels![0]).toMatchObject({ at: '2024-12-31', reading: 3.1 });
});

test('a survey of handpumps in Malawi, whose day is none of the drilling', async () => {
  const { records, troubles } = await read('boreholefuncmwi.csv');
  expect(troubles).toEqual([]);
  expect(records[2]).toMatchObject({
    identity: { number: '5' },
    site: { village: 'Chewere', households: 41 },
  });
  expect(records.every(({ bore }) => bore === undefined)).toBe(true);
});
