import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { holdsAgs, readAgs } from '../../../../core/exchange/ags/readAgs.ts';
import { bytesOf } from '../../../../core/exchange/encode.ts';

const folder = path.join(import.meta.dirname, '../../../data/ags4');

function read(text: string, name = 'holes.ags') {
  const result = readAgs({ name, bytes: bytesOf([text]) });
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

function published(name: string) {
  const result = readAgs({ name, bytes: readFileSync(path.join(folder, name)) });
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
}

const loca = '"GROUP","LOCA"\r\n"HEADING","LOCA_ID"\r\n"UNIT",""\r\n"TYPE","ID"\r\n';

function group(name: string, headings: string[], units: string[], rows: string[][]): string {
  const line = (fields: string[]) => `${fields.map((one) => `"${one}"`).join(',')}\r\n`;
  return [
    line(['GROUP', name]),
    line(['HEADING', 'LOCA_ID', ...headings]),
    line(['UNIT', '', ...units]),
    line(['TYPE', 'ID', ...headings.map(() => 'X')]),
    ...rows.map((row) => line(['DATA', ...row])),
    '\r\n',
  ].join('');
}

// Counts of the groups LOCA, GEOL and PIPE, as tests/data/ags4 has them.
test.each([
  ['2370644.ags', 9, 47, 16],
  ['a112794-14.ags', 2, 17, 4],
  ['hindley-mill-fra01.ags', 12, 71, 12],
  ['fettercairn-sa05.ags', 2, 12, 2],
])('%s comes in hole by hole', (name, holes, strata, pipes) => {
  const { wells } = published(name);
  const count = (of: (one: (typeof wells)[number]) => number) =>
    wells.reduce((sum, one) => sum + of(one), 0);
  expect(wells).toHaveLength(holes);
  expect(count(({ record }) => record.log?.length ?? 0)).toBe(strata);
  expect(
    count(({ record }) => (record.strings ?? []).flatMap((one) => one.components).length),
  ).toBe(pipes);
});

test('a hole stands as its file has it', () => {
  const { wells } = published('2370644.ags');
  const { record, line } = wells[1]!;
  expect(line).toBe(569);
  expect(record.identity).toMatchObject({ number: 'BH01', contract: '2370644' });
  expect(record.bore?.sections).toEqual([{ from: 0, to: 21, diameter: 120 }]);
  expect(record.log?.[2]).toMatchObject({
    from: 2.3,
    to: 2.8,
    material: 'clay',
    qualifiers: [{ material: 'silt' }, { material: 'gravel' }],
  });
  expect(record.annulus?.map(({ to, fill }) => [to, fill])).toEqual([
    [0.5, 'concrete'],
    [12.3, 'bentonite'],
    [13.3, 'gravelPack'],
    [21, 'bentonite'],
  ]);
  expect(record.strikes?.[0]).toEqual({ depth: 1.2, at: '2020-03-06' });
});

test('groups and headings without a place are told once each', () => {
  const { troubles } = published('a112794-14.ags');
  const told = troubles.map(({ column }) => column);
  expect(new Set(told).size).toBe(told.length);
  expect(told).toEqual(expect.arrayContaining(['CORE', 'LOCA']));
});

test('a quotation mark within a field is doubled, and a field may hold commas and line breaks', () => {
  const geol = group(
    'GEOL',
    ['GEOL_TOP', 'GEOL_BASE', 'GEOL_DESC'],
    ['m', 'm', ''],
    [['B1', '0.0', '1.5', 'Clay, called ""blue""\nby the crew']],
  );
  const { wells } = read(`${loca}"DATA","B1"\r\n\r\n${geol}`);
  expect(wells[0]!.record.log?.[0]?.words).toBe('Clay, called "blue"\nby the crew');
});

test('lengths are in the unit of their column', () => {
  const pipe = group(
    'PIPE',
    ['PIPE_REF', 'PIPE_TOP', 'PIPE_BASE', 'PIPE_DIAM', 'PIPE_TYPE'],
    ['', 'ft', 'ft', 'in', ''],
    [['B1', '1', '10', '20', '4', 'SLOTTED']],
  );
  const { wells } = read(`${loca}"DATA","B1"\r\n\r\n${pipe}`);
  const [string] = wells[0]!.record.strings!;
  expect(string!.set).toEqual({ by: 'bottom', depth: 6.096 });
  expect(string!.components).toMatchObject([{ kind: 'screen', length: 3.048, outside: 101.6 }]);
});

test('several pipes in a hole are strings of their own, in the order of the file', () => {
  const pipe = group(
    'PIPE',
    ['PIPE_REF', 'PIPE_TOP', 'PIPE_BASE', 'PIPE_TYPE'],
    ['', 'm', 'm', ''],
    [
      ['B1', 'deep', '0', '10', 'PLAIN'],
      ['B1', 'deep', '10', '12', 'SLOTTED'],
      ['B1', 'shallow', '0', '4', 'PLAIN'],
    ],
  );
  const { wells } = read(`${loca}"DATA","B1"\r\n"DATA","B2"\r\n\r\n${pipe}`);
  expect(wells[0]!.record.strings?.map(({ name }) => name)).toEqual(['deep', 'shallow']);
  expect(wells[1]!.record.strings).toBeUndefined();
});

test("a code means what the file's own ABBR group says", () => {
  const abbr =
    '"GROUP","ABBR"\r\n"HEADING","ABBR_HDNG","ABBR_CODE","ABBR_DESC"\r\n"UNIT","","",""\r\n' +
    '"TYPE","X","X","X"\r\n"DATA","BKFL_LEG","907","Cement/Grout Mix"\r\n' +
    '"DATA","GEOL_LEG","201","Silty SAND"\r\n\r\n';
  const bkfl = group(
    'BKFL',
    ['BKFL_TOP', 'BKFL_BASE', 'BKFL_LEG'],
    ['m', 'm', ''],
    [
      ['B1', '0', '2', '907'],
      ['B1', '2', '3', '903'],
      ['B1', '3', '4', '909'],
    ],
  );
  const geol = group(
    'GEOL',
    ['GEOL_TOP', 'GEOL_BASE', 'GEOL_LEG'],
    ['m', 'm', ''],
    [['B1', '0', '2', '201']],
  );
  const { wells, troubles } = read(`${loca}"DATA","B1"\r\n\r\n${abbr}${bkfl}${geol}`);
  expect(wells[0]!.record.annulus?.map(({ fill }) => fill)).toEqual(['cementGrout', 'bentonite']);
  expect(wells[0]!.record.log?.[0]).toMatchObject({
    material: 'sand',
    qualifiers: [{ material: 'silt' }],
  });
  expect(troubles).toMatchObject([{ column: 'BKFL_LEG', kept: false }]);
  expect(troubles[0]!.sentence).toContain('"909"');
});

test('what is wrong with a row is told by its line, and the others come in', () => {
  const geol = group(
    'GEOL',
    ['GEOL_TOP', 'GEOL_BASE', 'GEOL_DESC'],
    ['m', 'm', ''],
    [
      ['B1', '0', '1,5', 'Clay'],
      ['B1', '5', '4', 'Sand'],
      ['B1', '1', '2', 'Gravel'],
      ['B1', '9', '', ''],
    ],
  );
  const { wells, troubles } = read(`${loca}"DATA","B1"\r\n\r\n${geol}`);
  expect(wells[0]!.record.log?.map(({ words }) => words)).toEqual(['Gravel']);
  expect(troubles.map(({ line, column }) => [line, column])).toEqual([
    [11, 'GEOL_BASE'],
    [11, 'GEOL_BASE'],
    [12, 'GEOL_TOP'],
  ]);
});

test('readings of water below ground become levels, and strikes take their last rise', () => {
  const mond = group(
    'MOND',
    ['MONG_ID', 'MOND_DTIM', 'MOND_TYPE', 'MOND_RDNG', 'MOND_UNIT'],
    ['', 'yyyy-mm-ddThh:mm', '', '', ''],
    [
      ['B1', '1', '2020-03-08T10:30', 'WDEP', '4.25', 'm'],
      ['B1', '1', '2020-03-08T10:30', 'GFLO', '0.1', 'l/h'],
    ],
  );
  const wstg = group(
    'WSTG',
    ['WSTG_DPTH', 'WSTG_DTIM'],
    ['m', ''],
    [['B1', '8.00', '2020-03-06T00:00:00']],
  );
  const wstd = group(
    'WSTD',
    ['WSTG_DPTH', 'WSTD_NMIN', 'WSTD_POST'],
    ['m', 'min', 'm'],
    [
      ['B1', '8.00', '5', '7.00'],
      ['B1', '8.00', '20', '6.50'],
    ],
  );
  const { wells, troubles } = read(`${loca}"DATA","B1"\r\n\r\n${mond}${wstg}${wstd}`);
  expect(wells[0]!.record.levels).toEqual([
    {
      at: '2020-03-08',
      reading: 4.25,
      datum: 'ground',
      remark: 'Time as written: 2020-03-08T10:30',
    },
  ]);
  expect(wells[0]!.record.strikes).toEqual([
    { depth: 8, at: '2020-03-06', rise: 6.5, afterMinutes: 20 },
  ]);
  expect(troubles.map(({ column }) => column)).toEqual(['MOND_TYPE', 'WSTD']);
});

// Rows of MONG in tests/data/ags4, and what stands of them in the notes.
test('a published monitoring point leaves what no field is for in the notes', () => {
  const { wells, troubles } = published('2370644.ags');
  const notes = (number: string) =>
    wells.find(({ record }) => record.identity?.number === number)?.record.notes;
  expect(notes('BH01')).toContain(
    'Monitoring point 1 in pipe 1: Standpipe piezometer, 19mm Piezometer, 2020-03-06',
  );
  expect(notes('BH01')).not.toContain('response zone');
  expect(notes('WS03')).toContain('response zone 4 to 6 m');
  expect(notes('BH07')).toContain('response zone 3 to 2 m');
  expect(troubles.map(({ column }) => column)).not.toContain('MONG');
});

test('a published casing that goes deeper than the standpipe within it is kept as a remark', () => {
  const { wells } = published('a112794-14.ags');
  const { bore, strings } = wells[0]!.record;
  expect(bore?.remark).toContain('Casing of the drilling: 200 mm to 6.5 m, 100 mm to 14.5 m');
  expect(strings![0]!.components.map(({ outside }) => outside)).toEqual([undefined, undefined]);
});

test('a pipe without a diameter has that of the casing that ends with it', () => {
  const pipe = group(
    'PIPE',
    ['PIPE_REF', 'PIPE_TOP', 'PIPE_BASE', 'PIPE_DIAM', 'PIPE_TYPE'],
    ['', 'm', 'm', 'mm', ''],
    [
      ['B1', 'surface', '0', '6', '', 'PLAIN'],
      ['B1', 'well', '0', '20', '113', 'PLAIN'],
      ['B1', 'well', '20', '26', '113', 'SLOTTED'],
    ],
  );
  const cdia = group(
    'CDIA',
    ['CDIA_DPTH', 'CDIA_DIAM'],
    ['m', 'mm'],
    [
      ['B1', '6', '219'],
      ['B1', '20', '168'],
      ['B1', '', '300'],
    ],
  );
  const { wells, troubles } = read(`${loca}"DATA","B1"\r\n\r\n${pipe}${cdia}`);
  const { bore, strings } = wells[0]!.record;
  expect(strings!.map(({ components }) => components.map(({ outside }) => outside))).toEqual([
    [219],
    [113, 113],
  ]);
  expect(strings![0]!.remark).toContain('taken as outside');
  expect(bore?.remark).toBe('Casing of the drilling: 168 mm to 20 m');
  expect(troubles.map(({ column, kept }) => [column, kept])).toEqual([['CDIA_DPTH', false]]);
});

test('a response zone is a pack where the hole tells of no other, and readings name their point', () => {
  const mong = group(
    'MONG',
    ['MONG_ID', 'MONG_DIS', 'MONG_TYPE', 'MONG_TRZ', 'MONG_BRZ'],
    ['', 'm', '', 'm', 'm'],
    [
      ['B1', 'shallow', '0', 'SP', '2', '5'],
      ['B1', 'deep', '0', 'ICM', '0', '9'],
    ],
  );
  const mond = group(
    'MOND',
    ['MONG_ID', 'MOND_DTIM', 'MOND_TYPE', 'MOND_RDNG', 'MOND_UNIT'],
    ['', 'yyyy-mm-dd', '', '', ''],
    [['B1', 'shallow', '2020-03-08', 'WDEP', '10', 'ft']],
  );
  const { wells, troubles } = read(`${loca}"DATA","B1"\r\n\r\n${mong}${mond}`);
  const { annulus, levels, notes } = wells[0]!.record;
  expect(annulus).toEqual([
    { from: 2, to: 5, fill: 'gravelPack', remark: 'Response zone of monitoring point shallow' },
  ]);
  expect(levels).toEqual([
    { at: '2020-03-08', reading: 3.048, datum: 'ground', remark: 'Monitoring point shallow' },
  ]);
  expect(notes).toBe(
    'Monitoring point shallow: SP; Monitoring point deep: ICM, response zone 0 to 9 m',
  );
  expect(troubles).toEqual([]);
});

test('a position counts on WGS 84 alone', () => {
  const holes = group(
    'LOCA',
    ['LOCA_LAT', 'LOCA_LON', 'LOCA_LLZ'],
    ['', '', ''],
    [
      ['B1', '8:07:24.4416', '-1:14:04.4412', 'WGS84'],
      ['B2', '51:30:00', '-0:07:00', 'OSGB36'],
    ],
  );
  const { wells, troubles } = read(holes);
  expect(wells[0]!.record.site).toEqual({ latitude: 8.123456, longitude: -1.234567 });
  expect(wells[1]!.record.site).toBeUndefined();
  expect(troubles).toMatchObject([{ column: 'LOCA_LLZ', kept: true }]);
});

test('a file of AGS 4 is known by its first line, and one without holes is refused', () => {
  expect(holdsAgs({ name: 'a.txt', bytes: bytesOf(['\uFEFF"GROUP","PROJ"\r\n']) })).toBe(true);
  const refused = readAgs({ name: 'a.ags', bytes: bytesOf(['"GROUP","PROJ"\r\n']) });
  expect(refused).toMatchObject({ ok: false, error: { code: 'agsNoHoles' } });
});

test('AGS 3 is known by its stars and refused with what to ask for', () => {
  const older = { name: 'a.ags', bytes: bytesOf(['"**PROJ"\r\n"*PROJ_ID"\r\n']) };
  expect(holdsAgs(older)).toBe(true);
  const refused = readAgs(older);
  expect(refused).toMatchObject({ ok: false, error: { code: 'ags3' } });
  expect(!refused.ok && refused.error.sentence).toContain('Ask for it as AGS 4');
});

test('an abbreviation that repeats its code explains nothing, so the standard’s list counts', () => {
  const name = 'former-bakery.ags';
  const file = path.join(import.meta.dirname, '../../../data/ags4-alone', name);
  const result = readAgs({ name, bytes: readFileSync(file) });
  const wells = result.ok ? result.value.wells : [];
  expect(wells.map(({ record }) => record.log?.map((one) => one.material).join(' '))).toEqual([
    'madeGround madeGround silt sand clay',
    'madeGround madeGround clay clay',
    'madeGround madeGround clay clay sand gravel clay',
    'madeGround sand clay clay clay clay',
  ]);
});
