import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { bytesOf } from '../../../../core/exchange/encode.ts';
import { holdsWpdx, readWpdx } from '../../../../core/exchange/wpdx/readWpdx.ts';

const sample = path.join(import.meta.dirname, '../../../data/water-points/wpdx-sample-a.csv');
const file = (text: string) => ({ name: 'points.csv', bytes: bytesOf([text]) });

function read(text: string) {
  const result = readWpdx(file(text));
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

const heading = '#lat_deg,#lon_deg,#status_id,#report_date,#source,#scheme_id,#status,#adm1,#notes';

test('a row is a well, and its words stand in the notes as they were', () => {
  const row = '8.1,-1.2,No,2019-05-04,Some office,K-1,Functional,North,Near the school';
  const { wells, troubles } = read(`${heading}\n${row}\n`);
  expect(troubles).toEqual([]);
  expect(wells[0]).toMatchObject({ line: 2 });
  expect(wells[0]!.record).toEqual({
    schemaVersion: 1,
    identity: { number: 'K-1' },
    site: { region: 'North', latitude: 8.1, longitude: -1.2 },
    notes:
      'Near the school\n#report_date 2019-05-04; #source Some office; #status_id No; ' +
      '#status Functional',
  });
});

test('names without the mark, old names and the columns of the cleaned export are known', () => {
  const names = 'lat_deg,long_deg,status_id,report_date,status_clean,is_urban';
  const { wells, troubles } = read(`${names}\n8.1,-1.2,Yes,2019,Functional,true\n`);
  expect(wells[0]!.record.site).toEqual({ latitude: 8.1, longitude: -1.2 });
  expect(wells[0]!.record.notes).not.toContain('Functional');
  expect(troubles).toMatchObject([{ line: 1, kept: true }]);
  expect(troubles[0]!.sentence).toContain('status_clean, is_urban');
});

test('several visits to one point are one well', () => {
  const rows = [
    '8.1,-1.2,Yes,2015,A,K-1,,,',
    '8.1,-1.2,No,2018,B,K-1,,,',
    '8.2,1,No,2018,B,K-2,,,',
  ];
  const { wells } = read([heading, ...rows].join('\n'));
  expect(wells.map(({ record }) => record.identity?.number)).toEqual(['K-1', 'K-2']);
  expect(wells[0]!.record.notes).toBe(
    '#report_date 2015; #source A; #status_id Yes\n#report_date 2018; #source B; #status_id No',
  );
});

test.each([
  ['0,0', 'sea'],
  ['120.5,8.1', 'swapped'],
  [',', 'no position'],
])('a position of %s is left out and told', (position, word) => {
  const { wells, troubles } = read(`${heading}\n${position},Yes,2015,A,K-1,,,\n`);
  expect(wells[0]!.record.site).toBeUndefined();
  expect(troubles[0]).toMatchObject({ line: 2, column: 'lat_deg', kept: true });
  expect(troubles[0]!.sentence).toContain(word);
});

test('a spring comes in and is told to be no well', () => {
  const names = 'lat_deg,lon_deg,status_id,report_date,water_source';
  const { wells, troubles } = read(`${names}\n8,9,Yes,2015,Spring\n`);
  expect(wells).toHaveLength(1);
  expect(troubles[0]!.sentence).toContain('"Spring" is no well');
});

test('the published sample comes in whole', () => {
  const given = { name: 'wpdx-sample-a.csv', bytes: readFileSync(sample) };
  expect(holdsWpdx(given)).toBe(true);
  const result = readWpdx(given);
  if (!result.ok) throw new Error(result.error.sentence);
  const { wells, troubles } = result.value;
  // Rows and words counted in the file itself: 195 rows, 12 "no", 5 springs and 1 of rain.
  expect(wells).toHaveLength(195);
  expect(wells.filter(({ record }) => record.site?.latitude !== undefined)).toHaveLength(195);
  expect(wells.filter(({ record }) => /#status_id no\b/.test(record.notes ?? ''))).toHaveLength(12);
  expect(troubles.filter(({ column }) => column === 'water_source')).toHaveLength(6);
  expect(troubles.every(({ kept }) => kept)).toBe(true);
});

test('another table is none', () => {
  expect(holdsWpdx(file('lat,lon\n1,2\n'))).toBe(false);
});
