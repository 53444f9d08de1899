import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readAgs } from '../../../core/exchange/ags/readAgs.ts';
import { agsWriter } from '../../../core/exchange/ags/writeAgs.ts';
import { readGeoJson } from '../../../core/exchange/geojson/readGeoJson.ts';
import { geoJsonWriter } from '../../../core/exchange/geojson/writeGeoJson.ts';
import { readGwml } from '../../../core/exchange/gwml/readGwml.ts';
import { gwmlWriter } from '../../../core/exchange/gwml/writeGwml.ts';
import { readJson } from '../../../core/exchange/json/readJson.ts';
import { jsonLinesWriter, jsonWriter } from '../../../core/exchange/json/writeJson.ts';
import { readWpdx } from '../../../core/exchange/wpdx/readWpdx.ts';
import { wpdxWriter } from '../../../core/exchange/wpdx/writeWpdx.ts';
import type { GivenFile } from '../../../core/exchange/incoming.ts';
import type { MadeFile } from '../../../core/exchange/outgoing.ts';
import { csvWriter } from '../../../core/exchange/sheets/writeCsv.ts';
import { xlsxWriter } from '../../../core/exchange/sheets/writeXlsx.ts';
import { readRecord } from '../../../core/record/read.ts';
import { randomWell } from '../../laws/randomWell.ts';
import { anyRecord } from '../record/anyRecord.ts';
import { readBack } from './sheets/readBack.ts';
import {
  demoWells,
  falselyTold,
  thereAndBack,
  untold,
  writing,
  type ReadBack,
} from './roundTrip.ts';

const alone = (read: (file: GivenFile) => ReturnType<ReadBack>) => (files: readonly MadeFile[]) =>
  read(files[0]!);

const formats = [
  ['json', jsonWriter, alone(readJson)],
  ['jsonl', jsonLinesWriter, alone(readJson)],
  ['ags', agsWriter, alone(readAgs)],
  ['gwml', gwmlWriter, alone(readGwml)],
  ['geojson', geoJsonWriter, alone(readGeoJson)],
  ['wpdx', wpdxWriter, alone(readWpdx)],
  ['csv', csvWriter, readBack],
  ['xlsx', xlsxWriter, readBack],
] as const;

test.each(formats)(
  'a demo well comes back from %s but for what is told',
  async (_, writer, read) => {
    for (const [name, record] of demoWells()) {
      const back = await thereAndBack(record, writer(writing), read);
      expect([name, untold(record, back.record, back.losses)]).toEqual([name, []]);
    }
  },
);

test.each(formats)('what %s tells as lost is lost', async (_, writer, read) => {
  for (const [name, record] of demoWells()) {
    const back = await thereAndBack(record, writer(writing), read);
    expect([name, falselyTold(record, back.record, back.losses)]).toEqual([name, []]);
  }
});

test.each(formats)(
  'a random well comes back from %s but for what is told',
  async (_, writer, read) => {
    await fc.assert(
      fc.asyncProperty(randomWell, async (well) => {
        const record = { ...well, identity: { number: 'KD-0147' } };
        const back = await thereAndBack(record, writer(writing), read);
        expect(untold(record, back.record, back.losses)).toEqual([]);
      }),
      { numRuns: 40 },
    );
  },
);

test.each(formats)(
  'no record is too odd for %s, and nothing goes without a word',
  async (_, writer, read) => {
    await fc.assert(
      fc.asyncProperty(anyRecord, async (written) => {
        const reading = readRecord(written);
        if (reading.kind !== 'ok') throw new Error('no record');
        const back = await thereAndBack(reading.record, writer(writing), read);
        expect(untold(reading.record, back.record, back.losses)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  },
);

test.each(formats.slice(0, 2))('%s loses nothing', async (_, writer, read) => {
  for (const record of demoWells().values()) {
    const back = await thereAndBack(record, writer(writing), read);
    expect(back).toEqual({ record, losses: [] });
  }
});
