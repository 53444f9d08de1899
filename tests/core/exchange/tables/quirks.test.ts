import { describe, expect, it } from 'vitest';
import { readMapping, readTables } from '../../../../core/exchange/index.ts';

/** Reads one file with one table of it; `settings` stand in the mapping beside the tables. */
function read(table: object, text: string, settings: object = {}) {
  const mapping = readMapping({ ...settings, tables: [{ file: 'a.csv', well: 'No', ...table }] });
  if (!mapping.ok) throw new Error(mapping.error.sentence);
  return readTables([{ name: 'a.csv', text }], mapping.value);
}

const log = {
  kind: 'log',
  fields: {
    from: { column: 'Top', unit: 'm' },
    to: { column: 'Base', unit: 'm' },
    words: { column: 'Said' },
  },
};
const logRows = (text: string, settings: object = {}) => {
  const { records, troubles } = read(log, text, settings);
  return { log: records.flatMap((one) => one.log ?? []), troubles };
};

describe('delimited text as programs write it', () => {
  it('keeps delimiters, line ends and doubled marks that stand within quotation marks', () => {
    const { log, troubles } = logRows('No,Top,Base,Said\r\nW,0,2,"soft, ""wet""\r\nclay"\r\n');
    expect(troubles).toEqual([]);
    expect(log).toEqual([{ from: 0, to: 2, words: 'soft, "wet"\nclay' }]);
  });

  it('is read with a byte order mark before a heading in quotation marks', () => {
    const { log, troubles } = logRows('\uFEFF"No","Top","Base","Said"\n"W","0","2","clay"\n');
    expect(troubles).toEqual([]);
    expect(log).toEqual([{ from: 0, to: 2, words: 'clay' }]);
  });

  it('may have blanks round headings and cells', () => {
    const { log, troubles } = logRows('No , Top, Base , Said\n W , 0 , 2 , clay \n');
    expect(troubles).toEqual([]);
    expect(log).toEqual([{ from: 0, to: 2, words: 'clay' }]);
  });

  it('goes by semicolons or tabs where the mapping says so, with the table’s word over the set’s', () => {
    const rows = [{ from: 0, to: 2, words: 'a,b' }];
    expect(logRows('No;Top;Base;Said\nW;0;2;a,b\n', { delimiter: ';' }).log).toEqual(rows);
    expect(logRows('No\tTop\tBase\tSaid\nW\t0\t2\ta,b\n', { delimiter: '\t' }).log).toEqual(rows);
    const own = { ...log, delimiter: ';', decimal: ',', absent: ['-'] };
    const text = 'No;Top;Base;Said\nW;0,5;2;-\nW;2;3;n/a\n';
    const set = { delimiter: '\t', decimal: '.', absent: ['n/a'] };
    expect(read(own, text, set).records[0]?.log).toEqual([
      { from: 0.5, to: 2 },
      { from: 2, to: 3, words: 'n/a' },
    ]);
  });

  it('read by the wrong delimiter is told at the heading, once for each column', () => {
    const { log, troubles } = logRows('No;Top;Base;Said\nW;0;2;clay\n');
    expect(log).toEqual([]);
    expect(troubles.map(({ line, column }) => [line, column])).toEqual([
      [1, 'No'],
      [1, 'Top'],
      [1, 'Base'],
      [1, 'Said'],
    ]);
  });
});

describe('a number in a cell', () => {
  const top = (cell: string, decimal = '.') =>
    logRows(`No;Top;Base;Said\nW;${cell};99;x\n`, { delimiter: ';', decimal });

  it.each([
    ['+0.5', '.', 0.5],
    ['.5', '.', 0.5],
    ['5.', '.', 5],
    ['1e1', '.', 10],
    ['2.5E-1', '.', 0.25],
    ['0,5', ',', 0.5],
    ['12', ',', 12],
  ])('is read from %j with a decimal %j', (cell, decimal, value) => {
    expect(top(cell, decimal).log[0]?.from).toBe(value);
  });

  it.each([
    ['1,250', '.'],
    ['1.250', ','],
    ['1.250,5', ','],
    ['1 250', '.'],
    ['0x10', '.'],
    ['.', '.'],
    ['Infinity', '.'],
    ['5 m', '.'],
  ])('is not guessed from %j with a decimal %j', (cell, decimal) => {
    const { log, troubles } = top(cell, decimal);
    expect(log).toEqual([]);
    const mark = decimal === ',' ? 'comma' : 'point';
    expect(troubles).toMatchObject([{ line: 2, column: 'Top', kept: false }]);
    expect(troubles[0]?.sentence).toContain(`"${cell}" is not a number with a decimal ${mark}.`);
  });
});

describe('a day in a cell', () => {
  const day = (cell: string, dateOrder: string) => {
    const fields = { 'bore.startedOn': { column: 'Day' } };
    const { records, troubles } = read({ kind: 'wells', fields, dateOrder }, `No,Day\nW,${cell}\n`);
    return records[0]?.bore?.startedOn ?? troubles.map(({ sentence }) => sentence).join();
  };

  // Gregorian leap years: common practice.
  it.each([
    ['2021-3-7', 'ymd', '2021-03-07'],
    ['7.3.2021', 'dmy', '2021-03-07'],
    ['3/7/2021', 'mdy', '2021-03-07'],
    ['2021-03-07T23:59:00Z', 'ymd', '2021-03-07'],
    ['2000-02-29', 'ymd', '2000-02-29'],
    ['2024-02-29', 'ymd', '2024-02-29'],
    ['2021-04-30', 'ymd', '2021-04-30'],
    ['2021-12-31', 'ymd', '2021-12-31'],
  ])('%j in the order %s is %s', (cell, order, expected) => {
    expect(day(cell, order)).toBe(expected);
  });

  it.each([
    ['1900-02-29', 'ymd'],
    ['2023-02-29', 'ymd'],
    ['2021-04-31', 'ymd'],
    ['2021-00-10', 'ymd'],
    ['2021-13-10', 'ymd'],
    ['2021-01-00', 'ymd'],
    ['2021-01-32', 'ymd'],
    ['21-03-07', 'ymd'],
    ['7.3.21', 'dmy'],
    ['March 2021', 'ymd'],
  ])('%j in the order %s is told', (cell, order) => {
    expect(day(cell, order)).toContain(`"${cell}" is not a day written in the order ${order}.`);
  });
});

describe('several columns of one field', () => {
  const level = (text: string) => {
    const fields = {
      at: { columns: ['Day', 'Time'], offset: 'Z' },
      reading: { column: 'Level', unit: 'm' },
      datum: { value: 'ground' },
    };
    return read({ kind: 'levels', fields }, `No,Day,Time,Level\n${text}\n`);
  };

  it('are all named where what they say cannot be read', () => {
    const { troubles } = level('W,yesterday,09:30,4');
    expect(troubles).toMatchObject([{ line: 2, column: 'Day + Time' }]);
    expect(troubles[0]?.sentence).toContain('"yesterdayT09:30"');
  });

  it('keep an offset that a cell brings over that of the mapping', () => {
    const { records } = level('W,2021-03-07,09:30:15+05:30,4');
    expect(records[0]?.levels?.[0]?.at).toBe('2021-03-07T09:30:15+05:30');
  });

  it('of text are joined by a semicolon, without those that say nothing', () => {
    const said = { ...log, fields: { ...log.fields, words: { columns: ['Said', 'Also'] } } };
    const { records } = read(said, 'No,Top,Base,Said,Also\nW,0,1,a,b\nW,1,2,,b\nW,2,3,,\n');
    const words = records[0]?.log?.map((one) => one.words);
    expect(words).toEqual(['a; b', 'b', undefined]);
  });
});

describe('several sources of one field', () => {
  const material = (code: string, name: string) => {
    const sources = [
      { column: 'Code', words: { C: 'clay', Z: null } },
      { column: 'Name', words: { Sand: 'sand' } },
    ];
    const table = { ...log, fields: { ...log.fields, material: sources } };
    const text = `No,Top,Base,Said,Code,Name\nW,0,1,x,${code},${name}\n`;
    return read(table, text).records[0]?.log?.[0]?.material;
  };

  it('give way to the next where they say nothing or a word that nobody knows', () => {
    expect(material('C', 'Sand')).toBe('clay');
    expect(material('c', '')).toBe('clay');
    expect(material('', 'SAND')).toBe('sand');
    expect(material('Z', 'sand')).toBe('sand');
    expect(material('Q', 'sand')).toBe('sand');
  });

  it('become other only where a word is there and no source knows one', () => {
    expect(material('Q', '')).toBe('other');
    expect(material('Q', 'Q')).toBe('other');
    expect(material('', '')).toBeUndefined();
    expect(material('Z', '')).toBeUndefined();
  });
});

describe('a count in a cell', () => {
  const households = (cell: string) => {
    const fields = { 'site.households': { column: 'Homes' } };
    return read({ kind: 'wells', fields }, `No,Homes\nW,${cell}\n`);
  };

  it('is whole, and nothing else is taken for one', () => {
    expect(households('120').records[0]?.site?.households).toBe(120);
    for (const cell of ['12.5', '-3', '1e2', 'many']) {
      const { records, troubles } = households(cell);
      expect(records).toEqual([]);
      expect(troubles[0]?.sentence).toContain(`"${cell}" is not a whole number.`);
    }
  });
});
