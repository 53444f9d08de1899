import { describe, expect, it } from 'vitest';
import { strToU8, zipSync } from 'fflate';
import writeWorkbook from 'write-excel-file/node';
import { readMapping } from '../../../../core/exchange/tables/mapping.ts';
import { readSources } from '../../../../core/exchange/tables/readTables.ts';
import { sourcesOfFile } from '../../../../core/exchange/tables/source.ts';
import { limits } from '../../../../core/exchange/spreadsheet/unpack.ts';

const mappingOf = (table: object) => {
  const mapping = readMapping({ tables: [{ well: 'Well', fields: {}, ...table }] });
  if (!mapping.ok) throw new Error(mapping.error.sentence);
  return mapping.value;
};

async function workbook(...rows: (string | number | Date | null)[][]) {
  const made = await writeWorkbook(rows, { sheet: 'Log', dateFormat: 'dd/mm/yyyy' });
  return { name: 'wells.xlsx', bytes: new Uint8Array(await made.toBuffer()) };
}

async function opened(file: { name: string; bytes: Uint8Array }) {
  const sources = await sourcesOfFile(file);
  if (!sources.ok) throw new Error(sources.error.sentence);
  return sources.value;
}

const log = {
  kind: 'log',
  file: 'wells.xlsx',
  sheet: 'Log',
  headingLine: 3,
  fields: {
    from: { column: 'From', unit: 'm' },
    to: { column: 'To', unit: 'm' },
    material: { column: 'Ground', understand: true },
    qualifiers: { column: 'Ground', understand: true },
  },
};

describe('a sheet of a workbook', () => {
  it('is read below its title, with numbers, texts that look like formulas, and row numbers', async () => {
    const sources = await opened(
      await workbook(
        ['Logs of the lot', null, null, null],
        [null, null, null, null],
        ['Well', 'From', 'To', 'Ground'],
        ['W1', 0, 0.1 + 0.2, 'Sandy clay'],
        ['W1', 0.3, 'deep', '=1+1'],
        ['W1', 0.3, 4, '=1+1'],
      ),
    );
    const { records, wells, troubles } = readSources(sources, mappingOf(log));
    expect(records[0]!.log).toEqual([
      {
        from: 0,
        to: 0.3,
        material: 'clay',
        qualifiers: [{ material: 'sand' }],
        words: 'Sandy clay',
      },
      { from: 0.3, to: 4, material: 'other', words: '=1+1' },
    ]);
    expect(wells).toMatchObject([{ file: 'wells.xlsx [Log]', line: 4 }]);
    expect(troubles).toMatchObject([{ file: 'wells.xlsx [Log]', line: 5, column: 'To' }]);
  });

  it('has days as days, and numbers beside texts with a decimal comma', async () => {
    const sources = await opened(
      await workbook(
        ['Well', 'Deep', 'Day'],
        ['W1', 12.5, new Date(Date.UTC(2024, 4, 6))],
        ['W2', '12,5', '06/05/2024'],
      ),
    );
    const fields = {
      'bore.depthReached': { column: 'Deep', unit: 'm' },
      'bore.finishedOn': { column: 'Day' },
    };
    const mapped = { kind: 'wells', file: 'wells.xlsx', decimal: ',', dateOrder: 'dmy', fields };
    const { records, troubles } = readSources(sources, mappingOf(mapped));
    expect(troubles).toEqual([]);
    expect(records.map(({ bore }) => bore)).toEqual([
      { depthReached: 12.5, finishedOn: '2024-05-06' },
      { depthReached: 12.5, finishedOn: '2024-05-06' },
    ]);
  });
});

describe('a file that is no whole workbook', () => {
  const refusal = async (bytes: Uint8Array) => {
    const sources = await sourcesOfFile({ name: 'a.xlsx', bytes });
    return sources.ok ? undefined : sources.error.code;
  };

  it('is refused when it is cut off, or another kind of ZIP', async () => {
    const { bytes } = await workbook(['Well'], ['W1']);
    expect(await refusal(bytes.slice(0, bytes.length / 2))).toBe('notWorkbook');
    expect(await refusal(zipSync({ 'a.txt': strToU8('x') }))).toBe('notWorkbook');
    expect(await refusal(zipSync({ 'xl/workbook.xml': strToU8('<x') }))).toBe('notWorkbook');
  });

  it('is refused when it would unpack to more than memory bears, before it is unpacked', async () => {
    const bytes = zipSync({ 'xl/workbook.xml': strToU8('<x/>'), 'xl/a.xml': strToU8('<x/>') });
    const view = new DataView(bytes.buffer);
    for (let at = 0; at < bytes.length - 4; at++)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, limits.bytes, true);
    expect(await refusal(bytes)).toBe('workbookTooLarge');
  });

  it('is refused when it has more parts than any workbook', async () => {
    const parts = Array.from({ length: limits.parts + 1 }, (_, at) => [`${at}`, new Uint8Array()]);
    expect(await refusal(zipSync(Object.fromEntries(parts)))).toBe('workbookTooLarge');
  });

  it('never grows beyond the size that it claims', async () => {
    const bytes = zipSync({ 'xl/workbook.xml': strToU8(' '.repeat(1_000_000)) });
    const view = new DataView(bytes.buffer);
    for (let at = 0; at < bytes.length - 4; at++)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 9, true);
    expect(await refusal(bytes)).toBe('notWorkbook');
  });
});

describe('a table of text', () => {
  const source = (text: string) =>
    opened({ name: 'wells.csv', bytes: new TextEncoder().encode(text) });

  it('may describe its wells beside each interval', async () => {
    const sources = await source('Well,Name\nW1,a\nW1,a\nW1,b\nW2,c\n');
    const fields = { 'identity.name': { column: 'Name' } };
    const mapped = { kind: 'wells', file: 'wells.csv', repeats: true, fields };
    const { records, troubles } = readSources(sources, mappingOf(mapped));
    expect(records.map(({ identity }) => identity!.name)).toEqual(['a', 'c']);
    expect(troubles).toMatchObject([{ line: 4, kept: true }]);
  });

  it('is read without what a giant cell holds', async () => {
    const sources = await source(`Well,Name\nW1,${'x'.repeat(40_000)}\nW2,b\n`);
    const fields = { 'identity.name': { column: 'Name' } };
    const read = readSources(sources, mappingOf({ kind: 'wells', file: 'wells.csv', fields }));
    expect(read.records.map(({ identity }) => identity!.number)).toEqual(['W2']);
    expect(read.troubles).toMatchObject([{ line: 2, column: 'Name', kept: false }]);
  });

  it('may be headed __proto__ without changing what objects are', async () => {
    const sources = await source('Well,__proto__,constructor\nW1,a,b\n');
    const fields = { 'identity.name': { column: '__proto__' }, notes: { column: 'constructor' } };
    const { records } = readSources(
      sources,
      mappingOf({ kind: 'wells', file: 'wells.csv', fields }),
    );
    expect(records[0]).toMatchObject({ identity: { number: 'W1', name: 'a' }, notes: 'b' });
    expect(Object.keys(Object.prototype)).toEqual([]);
  });
});
