import { expect, test } from 'vitest';
import { decode } from '../../../../core/exchange/tables/decode.ts';
import { readRows } from '../../../../core/exchange/tables/rows.ts';
import { wpdxWriter } from '../../../../core/exchange/wpdx/writeWpdx.ts';
import { writeWells } from '../../../../core/exchange/writer.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { outgoing, writing } from '../roundTrip.ts';

async function written(records: readonly WellRecord[]) {
  const { files, losses } = await writeWells(wpdxWriter(writing), records.map(outgoing));
  const { heading, rows } = readRows(decode(files[0]!.bytes).text, ',');
  const cells = rows.map((row) =>
    Object.fromEntries(heading.map((name, at) => [name, row.cells[at]])),
  );
  return { cells, losses };
}

const well: WellRecord = {
  schemaVersion: 1,
  identity: { number: 'K-1', programme: 'Village wells' },
  site: { latitude: 8.1, longitude: -1.2 },
  bore: { finishedOn: '2026-02-03' },
};

// What the standard asks of a row: docs/exchange.md.
test('a row has what the standard asks of it', async () => {
  const { cells } = await written([well]);
  expect(cells).toEqual([
    expect.objectContaining({
      '#lat_deg': '8.1',
      '#lon_deg': '-1.2',
      '#status_id': 'Unknown',
      '#report_date': '2026-02-03',
      '#source': 'Village wells',
      '#water_source': 'Borehole/Tubewell',
      '#install_year': '2026',
      '#scheme_id': 'K-1',
    }),
  ]);
});

test('water was there when the well was pumped, and not where it was dry', async () => {
  const tests = [{ kind: 'constantRate' as const, rate: 1.2 }];
  const identity = { ...well.identity, state: 'dry' as const };
  const { cells } = await written([
    { ...well, tests },
    { ...well, identity, tests },
  ]);
  expect(cells.map((row) => row['#status_id'])).toEqual(['Yes', 'No']);
});

test.each([
  ['site' as const, '#lat_deg, #lon_deg'],
  ['bore' as const, '#report_date'],
])('a well without its %s stays out, and what it lacks is told', async (chapter, columns) => {
  const { cells, losses } = await written([{ ...well, [chapter]: {} }, well]);
  expect(cells).toHaveLength(1);
  const out = losses.filter(({ path }) => path === '');
  expect(out).toMatchObject([{ well: 'K-1' }]);
  expect(out[0]!.sentence).toContain(columns);
});

test('a count of coliforms goes out with its presence', async () => {
  const found = { parameter: 'E. coli', unit: 'CFU/100 mL' };
  const { cells } = await written([
    { ...well, quality: [{ results: [{ ...found, value: 12 }] }] },
    { ...well, quality: [{ results: [{ ...found, value: 1, below: true }] }] },
  ]);
  expect(cells.map((row) => row['#fecal_coliform_presence'])).toEqual(['Present', 'Absent']);
  expect(cells.map((row) => row['#fecal_coliform_value'])).toEqual(['12', '']);
});
