import { expect, test } from 'vitest';
import { csvWriter } from '../../../../core/exchange/sheets/writeCsv.ts';
import { xlsxWriter } from '../../../../core/exchange/sheets/writeXlsx.ts';
import { readSpreadsheet } from '../../../../core/exchange/spreadsheet/readSpreadsheet.ts';
import { decode } from '../../../../core/exchange/tables/decode.ts';
import { writeWells, type WellWriter } from '../../../../core/exchange/writer.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { demoWells, outgoing, writing } from '../roundTrip.ts';
import { readBack } from './readBack.ts';

const well: WellRecord = {
  schemaVersion: 1,
  identity: { number: 'K-1', name: '=HYPERLINK("x")' },
  site: { elevation: 312.4 },
  log: [
    {
      from: 0,
      to: 2,
      material: 'clay',
      qualifiers: [{ material: 'sand' }, { material: 'gravel' }],
    },
  ],
  strings: [
    { name: 'main', components: [{ kind: 'plain', outside: 125, length: 3 }] },
    { name: 'outer', components: [{ kind: 'plain', outside: 219, length: 2 }] },
  ],
  annulus: [{ from: 0, to: 1, fill: 'cementGrout', around: 1, remark: '+27 11 123' }],
};

const write = (writer: WellWriter, records: readonly WellRecord[] = [well]) =>
  writeWells(writer, records.map(outgoing));

test('a set of tables has a file for each kind of row, its units in the headings', async () => {
  const { files } = await write(csvWriter(writing));
  const kinds = ['wells', 'log', 'pieces', 'fills'].map((kind) => `wells-${kind}.csv`);
  expect(files.map(({ name }) => name)).toEqual([...kinds, 'wells-mapping.json']);
  const [heading] = decode(files[2]!.bytes).text.split('\r\n');
  expect(heading).toBe(
    'well,from [m],to [m],kind,string,material,outside [mm],inside [mm],wall [mm],joint,' +
      'slotWidth [mm],slotSpacing [mm],openArea,remark',
  );
});

test('the mark of UTF-8 stands before each table where it is wished', async () => {
  const marked = (await write(csvWriter({ ...writing, bom: true }))).files;
  const plain = (await write(csvWriter(writing))).files;
  const start = ({ bytes }: { bytes: Uint8Array }) => [...bytes.slice(0, 3)];
  for (const file of marked.slice(0, -1)) expect(start(file)).toEqual([0xef, 0xbb, 0xbf]);
  expect(start(marked.at(-1)!)).toEqual(start(plain.at(-1)!));
  expect(start(plain[0]!)).not.toEqual([0xef, 0xbb, 0xbf]);
});

test('no cell is run by a spreadsheet, and each comes back as it was', async () => {
  const { files } = await write(csvWriter(writing));
  const text = files.map(({ bytes }) => decode(bytes).text).join('');
  expect(text).toContain(`"'=HYPERLINK(""x"")"`);
  expect(text).toContain("'+27 11 123");
  const back = await readBack(files);
  expect(back.ok && back.value.wells[0]!.record).toMatchObject({
    identity: { name: '=HYPERLINK("x")' },
    annulus: [{ remark: '+27 11 123' }],
  });
});

test('a workbook holds the same as sheets, its texts as texts and its figures as figures', async () => {
  const { files } = await write(xlsxWriter(writing));
  expect(files.map(({ name }) => name)).toEqual(['wells.xlsx', 'wells-mapping.json']);
  const sheets = await readSpreadsheet(files[0]!);
  if (!sheets.ok) throw new Error(sheets.error.sentence);
  expect(sheets.value.map(({ sheet }) => sheet)).toEqual(['wells', 'log', 'pieces', 'fills']);
  const [, first] = sheets.value[0]!.data;
  expect(first).toEqual(expect.arrayContaining(['K-1', '=HYPERLINK("x")', 312.4]));
});

test.each([
  ['csv', csvWriter],
  ['xlsx', xlsxWriter],
])('several wells of a %s come back as several, each fill round its string', async (_, writer) => {
  const twin = { ...well, identity: { number: 'K-1' } };
  const { files } = await write(writer(writing), [well, twin]);
  const back = await readBack(files);
  if (!back.ok) throw new Error(back.error.sentence);
  const { wells, troubles } = back.value;
  expect(troubles).toEqual([]);
  expect(wells.map(({ record }) => record.identity?.number)).toEqual(['K-1', 'K-1']);
  const { strings, annulus } = wells[1]!.record;
  expect(strings?.[annulus![0]!.around!]?.name).toBe('outer');
});

test.each([
  ['csv', csvWriter],
  ['xlsx', xlsxWriter],
])('the same wells give the same bytes of a %s', async (_, writer) => {
  const wells = [...demoWells().values()];
  const [one, other] = [await write(writer(writing), wells), await write(writer(writing), wells)];
  expect(one.files).toEqual(other.files);
});
