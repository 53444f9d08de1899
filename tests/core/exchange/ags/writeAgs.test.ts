import { expect, test } from 'vitest';
import { writtenGroups } from '../../../../core/exchange/ags/groups.ts';
import { agsWriter } from '../../../../core/exchange/ags/writeAgs.ts';
import { decode } from '../../../../core/exchange/tables/decode.ts';
import { writeWells } from '../../../../core/exchange/writer.ts';
import { demoWells, outgoing, writing } from '../roundTrip.ts';

async function written() {
  const wells = [...demoWells().values()].map(outgoing);
  const { files } = await writeWells(agsWriter(writing), wells);
  return decode(files[0]!.bytes).text;
}

/** Key headings of the "AGS 4.1 Dictionary" in github.com/asitha-sena/python-ags4. */
const keys: Readonly<Record<string, readonly string[]>> = {
  PROJ: ['PROJ_ID'],
  TRAN: ['TRAN_ISNO'],
  ABBR: ['ABBR_HDNG', 'ABBR_CODE'],
  TYPE: ['TYPE_TYPE'],
  UNIT: ['UNIT_UNIT'],
  LOCA: ['LOCA_ID'],
  HDPH: ['LOCA_ID', 'HDPH_TOP', 'HDPH_BASE', 'HDPH_TYPE'],
  HDIA: ['LOCA_ID', 'HDIA_DPTH', 'HDIA_DIAM'],
  GEOL: ['LOCA_ID', 'GEOL_TOP', 'GEOL_BASE'],
  SAMP: ['LOCA_ID', 'SAMP_TOP', 'SAMP_REF', 'SAMP_TYPE', 'SAMP_ID'],
  PIPE: ['LOCA_ID', 'PIPE_REF', 'PIPE_TOP', 'PIPE_BASE'],
  BKFL: ['LOCA_ID', 'BKFL_TOP'],
  WSTG: ['LOCA_ID', 'WSTG_DPTH'],
  WSTD: ['LOCA_ID', 'WSTG_DPTH', 'WSTD_NMIN'],
  MONG: ['LOCA_ID', 'MONG_ID', 'MONG_DIS'],
  MOND: ['LOCA_ID', 'MONG_ID', 'MONG_DIS', 'MOND_DTIM', 'MOND_TYPE', 'MOND_REF'],
};

/** Groups cut out of the text by hand, with the plainest reading of the rules. */
function groupsOf(text: string) {
  const blocks = text.split('\r\n\r\n').filter((block) => block !== '');
  return blocks.map((block) => {
    const lines = block.split('\r\n').map((line) => line.slice(1, -1).split('","'));
    const [group, headings, units, types, ...data] = lines;
    return {
      name: group![1]!,
      heads: [group![0], headings![0], units![0], types![0]],
      headings: headings!.slice(1),
      units: units!.slice(1),
      types: types!.slice(1),
      rows: data.map(([, ...fields]) => fields),
    };
  });
}

test('every line ends with CR LF and holds quoted fields alone', async () => {
  const text = await written();
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  for (const line of text.split('\r\n').filter(Boolean))
    expect(line).toMatch(/^"(GROUP|HEADING|UNIT|TYPE|DATA)"(,"([^"]|"")*")+$/);
});

test('each group opens with its four lines, once, and its rows are as long as its headings', async () => {
  const groups = groupsOf(await written());
  const names = groups.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(names).toEqual(expect.arrayContaining(['PROJ', 'TRAN', 'TYPE', 'UNIT', 'ABBR', 'LOCA']));
  for (const { name, heads, headings, rows } of groups) {
    expect([name, ...heads]).toEqual([name, 'GROUP', 'HEADING', 'UNIT', 'TYPE']);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect([name, row.length]).toEqual([name, headings.length]);
  }
});

test('key fields together are unique within a group', async () => {
  expect(Object.keys(keys).sort()).toEqual(Object.keys(writtenGroups).sort());
  for (const { name, headings, rows } of groupsOf(await written())) {
    const found = rows.map((row) => keys[name]!.map((key) => row[headings.indexOf(key)]).join('|'));
    expect([name, new Set(found).size]).toEqual([name, found.length]);
  }
});

test('every type, unit and abbreviation in use is explained in the file', async () => {
  const groups = groupsOf(await written());
  const listed = (name: string, columns: number) =>
    groups.find((one) => one.name === name)!.rows.map((row) => row.slice(0, columns).join(' '));
  const [types, units, codes] = [listed('TYPE', 1), listed('UNIT', 1), listed('ABBR', 2)];
  for (const group of groups) {
    for (const type of group.types) expect(types).toContain(type);
    for (const unit of group.units.filter(Boolean)) expect(units).toContain(unit);
    group.headings.forEach((heading, at) => {
      const values = group.rows.map((row) => row[at]!).filter(Boolean);
      if (group.types[at] === 'PA')
        for (const code of values) expect(codes).toContain(`${heading} ${code}`);
      if (group.types[at] === 'PU') for (const unit of values) expect(units).toContain(unit);
    });
  }
});

test('values are of the type of their column', async () => {
  const forms: Readonly<Record<string, RegExp>> = {
    '1DP': /^-?\d+\.\d$/,
    '2DP': /^-?\d+\.\d\d$/,
    '3DP': /^-?\d+\.\d\d\d$/,
    DMS: /^-?\d{1,3}:\d\d:\d\d\.\d+$/,
    DT: /^\d{4}-\d\d-\d\d(T\d\d:\d\d:\d\d([+-]\d\d:\d\d)?)?$/,
    ID: /^.+$/,
  };
  for (const { types, rows, headings } of groupsOf(await written()))
    types.forEach((type, at) => {
      for (const row of rows)
        if (type in forms && row[at] !== '')
          expect([headings[at], row[at]]).toEqual([
            headings[at],
            expect.stringMatching(forms[type]!),
          ]);
    });
});

test('every row belongs to a hole of LOCA, and holes of one number are told apart', async () => {
  const [record] = demoWells().values();
  const { files, losses } = await writeWells(agsWriter(writing), [
    outgoing(record!),
    outgoing(record!),
  ]);
  const groups = groupsOf(decode(files[0]!.bytes).text);
  const ids = groups.find(({ name }) => name === 'LOCA')!.rows.map(([id]) => id);
  expect(ids).toEqual([record!.identity!.number, `${record!.identity!.number}-2`]);
  for (const { headings, rows } of groups.filter(({ headings: [first] }) => first === 'LOCA_ID'))
    for (const row of rows) expect(ids).toContain(row[headings.indexOf('LOCA_ID')]);
  expect(losses.filter(({ path }) => path === 'identity.number')).toHaveLength(1);
});

test('the response zone of the point of levels is the one screen of the string', async () => {
  const groups = groupsOf(await written());
  const rowsOf = (name: string) => {
    const { headings, rows } = groups.find((one) => one.name === name)!;
    return rows.map((row) => new Map(headings.map((heading, at) => [heading, row[at]!])));
  };
  const points = rowsOf('MONG').filter((one) => one.get('MONG_TRZ') !== '');
  expect(points.length).toBeGreaterThan(0);
  for (const point of points) {
    const screens = rowsOf('PIPE').filter(
      (one) =>
        one.get('PIPE_TYPE') === 'SLOTTED' &&
        ['LOCA_ID', 'PIPE_REF'].every((key) => one.get(key) === point.get(key)),
    );
    const [tops, bases] = ['PIPE_TOP', 'PIPE_BASE'].map((key) =>
      screens.map((one) => Number(one.get(key))),
    );
    expect(Number(point.get('MONG_TRZ'))).toBe(Math.min(...tops!));
    expect(Number(point.get('MONG_BRZ'))).toBe(Math.max(...bases!));
  }
});

test('the same wells give the same bytes', async () => {
  expect(await written()).toBe(await written());
});
