import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readAgs } from '../../../../core/exchange/ags/readAgs.ts';
import { agsWriter } from '../../../../core/exchange/ags/writeAgs.ts';
import { writeWells } from '../../../../core/exchange/writer.ts';
import { readRecord } from '../../../../core/record/read.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { randomWell } from '../../../laws/randomWell.ts';
import { anyRecord } from '../../record/anyRecord.ts';
import { demoWells, falselyTold, outgoing, untold, writing } from '../roundTrip.ts';

async function there(record: WellRecord) {
  const { files, losses } = await writeWells(agsWriter(writing), [outgoing(record)]);
  const read = readAgs(files[0]!);
  if (!read.ok) throw new Error(read.error.sentence);
  return { record: read.value.wells[0]!.record, losses };
}

test('a demo well comes back from AGS 4 as it was, but for what was told', async () => {
  for (const [name, record] of demoWells()) {
    const back = await there(record);
    expect([name, untold(record, back.record, back.losses)]).toEqual([name, []]);
    expect([name, falselyTold(record, back.record, back.losses)]).toEqual([name, []]);
  }
});

test('a random well comes back from AGS 4 as it was, but for what was told', async () => {
  await fc.assert(
    fc.asyncProperty(randomWell, async (record) => {
      const back = await there({ ...record, identity: { number: 'KD-0147' } });
      expect(
        untold({ ...record, identity: { number: 'KD-0147' } }, back.record, back.losses),
      ).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

test('any record that can be read goes out, and nothing is lost without a word', async () => {
  await fc.assert(
    fc.asyncProperty(anyRecord, async (written) => {
      const reading = readRecord(written);
      if (reading.kind !== 'ok') throw new Error('no record');
      const back = await there(reading.record);
      expect(untold(reading.record, back.record, back.losses)).toEqual([]);
    }),
    { numRuns: 60 },
  );
});
