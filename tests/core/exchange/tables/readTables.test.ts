import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readMapping, readTables, type TableMapping } from '../../../../core/exchange/index.ts';
import { currentVersion } from '../../../../core/record/schema.ts';

function mappingOf(...tables: object[]): TableMapping {
  const read = readMapping({ tables });
  if (!read.ok) throw new Error(read.error.sentence);
  return read.value;
}

const logTable = {
  kind: 'log',
  file: 'log.csv',
  well: 'No',
  fields: {
    from: { column: 'Top', unit: 'm' },
    to: { column: 'Base', unit: 'm' },
    material: { column: 'Code', words: { CLY: 'clay', NIL: null } },
    words: { column: 'Said' },
  },
};

const logOf = (...lines: string[]) =>
  readTables(
    [{ name: 'log.csv', text: ['No,Top,Base,Code,Said', ...lines].join('\n') }],
    mappingOf(logTable),
  );

describe('a log table', () => {
  it('gives one record a well, its intervals from the ground down', () => {
    const { records, troubles } = logOf('W2,4,9,CLY,b', 'W1,0,2,CLY,c', 'W2,0,4,CLY,a');
    expect(troubles).toEqual([]);
    expect(records).toEqual([
      {
        schemaVersion: currentVersion,
        identity: { number: 'W2' },
        log: [
          { from: 0, to: 4, material: 'clay', words: 'a' },
          { from: 4, to: 9, material: 'clay', words: 'b' },
        ],
      },
      {
        schemaVersion: currentVersion,
        identity: { number: 'W1' },
        log: [{ from: 0, to: 2, material: 'clay', words: 'c' }],
      },
    ]);
  });

  it('keeps the driller’s words whole and calls a material it does not know other', () => {
    const { records } = logOf('W1,0,2,XYZ,"Hard, blue ""pug"""');
    expect(records[0]!.log).toEqual([
      { from: 0, to: 2, material: 'other', words: 'Hard, blue "pug"' },
    ]);
  });

  it('leaves absent what a cell does not say', () => {
    const { records } = logOf('W1,0,2,,', 'W1,2,3,nil,x');
    expect(records[0]!.log).toEqual([
      { from: 0, to: 2 },
      { from: 2, to: 3, words: 'x' },
    ]);
  });
});

describe('a bad row', () => {
  it.each([
    ['of too few cells', 'W1,0,2', '', /3 cells under 5 headings/],
    ['of too many cells', 'W1,0,2,CLY,a,b', '', /6 cells under 5 headings/],
    ['without a well', ' ,0,2,CLY,a', 'No', /names no well/],
    ['with text for a number', 'W1,zero,2,CLY,a', 'Top', /"zero" is not a number/],
    ['with the wrong decimal mark', 'W1,0,"2,5",CLY,a', 'Base', /"2,5" is not a number.*point/],
    ['with its lower end above', 'W1,5,2,CLY,a', 'Base', /lower end, 2 m, does not lie below.*5 m/],
    ['without thickness', 'W1,2,2,CLY,a', 'Base', /lower end, 2 m/],
    ['without a depth', 'W1,,2,CLY,a', 'Top', /needs its "from"/],
  ])('%s is told with file, line and column, and the good ones come in', (_, bad, column, says) => {
    const { records, troubles } = logOf('W0,0,1,CLY,x', bad, 'W0,1,2,CLY,y');
    expect(records).toHaveLength(1);
    expect(records[0]!.log).toHaveLength(2);
    expect(troubles).toMatchObject([
      { file: 'log.csv', line: 3, column, sentence: expect.stringMatching(says), kept: false },
    ]);
    expect(troubles[0]!.sentence).toMatch(/the row was left out/);
  });

  it('tells everything that is wrong with it at once', () => {
    const { troubles } = logOf('W1,a,b,CLY,x');
    expect(troubles.map(({ column }) => column)).toEqual(['Top', 'Base']);
  });

  it('is what stands after a quotation mark that is never closed', () => {
    const { records, troubles } = logOf('W1,0,1,CLY,a', 'W1,1,2,CLY,"b', 'W1,2,3,CLY,c');
    expect(records[0]!.log).toHaveLength(1);
    expect(troubles).toMatchObject([{ file: 'log.csv', line: 3, kept: false }]);
  });
});

const wells = {
  kind: 'wells',
  file: 'wells.csv',
  well: 'No',
  fields: {
    'identity.name': { column: 'Name' },
    'site.latitude': { column: 'Lat' },
    'bore.finishedOn': { column: 'Day' },
  },
};

const wellsOf = (settings: object, ...lines: string[]) =>
  readTables(
    [{ name: 'wells.csv', text: ['No,Name,Lat,Day', ...lines].join('\n') }],
    mappingOf({ ...wells, ...settings }),
  );

describe('a wells table', () => {
  it('is held to the record’s own rules', () => {
    const { records, troubles } = wellsOf({}, 'W1,a,95,', 'W2,b,12.5,');
    expect(records.map(({ site }) => site)).toEqual([{ latitude: 12.5 }]);
    expect(troubles).toMatchObject([{ line: 2, column: 'Lat' }]);
    expect(troubles[0]!.sentence).toMatch(/^95 is more than 90/);
  });

  it('takes the first of two rows for one well', () => {
    const { records, troubles } = wellsOf({}, 'W1,first,,', 'W1,second,,');
    expect(records.map(({ identity }) => identity!.name)).toEqual(['first']);
    expect(troubles).toMatchObject([{ line: 3, column: 'No' }]);
  });

  it('reads days in the order that the mapping says, and only days that exist', () => {
    const { records, troubles } = wellsOf(
      { dateOrder: 'dmy' },
      'W1,,,7.3.2021',
      'W2,,,29/02/2020',
      'W3,,,29/02/2021',
      'W4,,,2021-03-07',
    );
    // A day that begins with its year can be read in no other order.
    const days = ['2021-03-07', '2020-02-29', '2021-03-07'];
    expect(records.map(({ bore }) => bore?.finishedOn)).toEqual(days);
    expect(troubles.map(({ line, column }) => [line, column])).toEqual([[4, 'Day']]);
  });

  it('reads a decimal comma between semicolons', () => {
    const text = 'No;Name;Lat;Day\nW1;a;12,25;\nW2;b;1.250,5;\n';
    const { records, troubles } = readTables(
      [{ name: 'wells.csv', text }],
      mappingOf({ ...wells, delimiter: ';', decimal: ',' }),
    );
    expect(records[0]!.site!.latitude).toBe(12.25);
    expect(troubles).toMatchObject([{ line: 3, column: 'Lat' }]);
  });

  it('takes the words that stand for an empty cell as nothing', () => {
    const { records } = wellsOf({ absent: ['n/a'] }, 'W1,n/a,n/a,n/a');
    expect(records).toEqual([{ schemaVersion: currentVersion, identity: { number: 'W1' } }]);
  });
});

const sections = {
  kind: 'sections',
  file: 'hole.csv',
  well: 'No',
  fields: {
    to: { column: 'To', unitColumn: 'Unit' },
    diameter: { column: 'Dia', unit: 'in' },
  },
};

describe('sections of the hole', () => {
  const read = (text: string) => readTables([{ name: 'hole.csv', text }], mappingOf(sections));

  it('that give only their lower ends begin where the one above ends', () => {
    const { records } = read('No,To,Unit,Dia\nW1,100,ft,6\nW1,20,ft,10\n');
    expect(records[0]!.bore!.sections).toEqual([
      { from: 0, to: 6.096, diameter: 254 },
      { from: 6.096, to: 30.48, diameter: 152.4 },
    ]);
  });

  it('in a unit that nobody knows are told with the column of the unit', () => {
    const { records, troubles } = read('No,To,Unit,Dia\nW1,10,fathom,6\nW1,20,ft,6\n');
    expect(records[0]!.bore!.sections).toHaveLength(1);
    expect(troubles).toMatchObject([{ file: 'hole.csv', line: 2, column: 'Unit' }]);
    expect(troubles[0]!.sentence).toMatch(/"fathom" is not a unit of length; known are m, cm/);
  });
});

const construction = {
  file: 'pipe.csv',
  well: 'No',
  sparse: true,
};
const pieces = {
  ...construction,
  kind: 'pieces',
  fields: {
    from: { column: 'From', unit: 'm' },
    to: { column: 'To', unit: 'm' },
    kind: { column: 'Kind', words: { C: 'plain', S: 'screen' } },
    outside: { column: 'OD', unit: 'mm' },
  },
};
const fills = {
  ...construction,
  kind: 'fills',
  fields: {
    from: { column: 'GroutFrom', unit: 'm' },
    to: { column: 'GroutTo', unit: 'm' },
    fill: { value: 'cementGrout' },
    aroundDiameter: { column: 'OD', unit: 'mm' },
  },
};
const pipesOf = (...lines: string[]) => {
  const text = ['No,From,To,Kind,OD,GroutFrom,GroutTo', ...lines].join('\n');
  return readTables([{ name: 'pipe.csv', text }], mappingOf(pieces, fills));
};

describe('a table of casing with its grout', () => {
  it('gives strings, and fills that know which string they surround', () => {
    const { records, troubles } = pipesOf(
      'W1,0,30,C,125,0,20',
      'W1,0,6,C,300,0,6',
      'W1,30,36,S,125,,',
    );
    expect(troubles).toEqual([]);
    expect(records[0]!.strings!.map(({ set }) => set)).toEqual([
      { by: 'bottom', depth: 6 },
      { by: 'bottom', depth: 36 },
    ]);
    expect(records[0]!.annulus).toEqual([
      { from: 0, to: 6, fill: 'cementGrout', around: 0 },
      { from: 0, to: 20, fill: 'cementGrout', around: 1 },
    ]);
  });

  it('tells a gap with the line of the lower piece, which comes in all the same', () => {
    const { records, troubles } = pipesOf('W1,0,10,C,125,,', 'W1,12,15,S,125,,');
    expect(records[0]!.strings).toHaveLength(2);
    expect(troubles).toEqual([
      {
        file: 'pipe.csv',
        line: 3,
        column: 'From',
        sentence: expect.stringMatching(/between 10 m and 12 m/),
        reason: { code: 'gapBetween', values: { above: 10, below: 12 } },
        kept: true,
      },
    ]);
  });

  it('tells a kind of piece that the mapping does not know', () => {
    const { records, troubles } = pipesOf('W1,0,10,Q,125,,', 'W1,0,10,C,125,,');
    expect(records[0]!.strings).toHaveLength(1);
    expect(troubles).toMatchObject([{ line: 2, column: 'Kind', kept: false }]);
  });

  it('tells a fill whose string is not there', () => {
    const { records, troubles } = pipesOf('W1,0,10,C,125,,', 'W1,,,C,90,0,5');
    expect(records[0]!.annulus).toBeUndefined();
    expect(troubles.map(({ line, column }) => [line, column])).toContainEqual([3, 'OD']);
  });
});

const levels = {
  kind: 'levels',
  file: 'levels.csv',
  well: 'No',
  fields: {
    at: { columns: ['Day', 'Time'], offset: '+01:00' },
    reading: { column: 'Level', unit: 'm' },
    datum: { value: 'casingTop' },
    remark: { column: 'Note' },
  },
};

describe('a level', () => {
  const read = (table: object, ...lines: string[]) => {
    const text = ['No,Day,Time,Level,Note', ...lines].join('\n');
    return readTables([{ name: 'levels.csv', text }], mappingOf(table));
  };

  it('has its moment from day, time and the offset of the mapping', () => {
    const { records } = read(levels, 'W1,2021-03-07,09:30,4.2,', 'W1,2021-03-08,,4.3,');
    expect(records[0]!.levels).toEqual([
      { at: '2021-03-07T09:30+01:00', reading: 4.2, datum: 'casingTop' },
      { at: '2021-03-08', reading: 4.3, datum: 'casingTop' },
    ]);
  });

  it('keeps a time without offset in words and its day as the moment', () => {
    const { columns } = levels.fields.at;
    const plain = { ...levels, fields: { ...levels.fields, at: { columns } } };
    const { records } = read(plain, 'W1,2021-03-07,09:30,4.2,tape');
    expect(records[0]!.levels).toMatchObject([
      { at: '2021-03-07', remark: 'tape; Time as written: 2021-03-07T09:30' },
    ]);
  });
});

describe('tables and mapping that do not belong together', () => {
  it('are told: a column that is not there, or twice', () => {
    const missing = readTables([{ name: 'log.csv', text: 'No,Top\nW1,0\n' }], mappingOf(logTable));
    expect(missing.records).toEqual([]);
    expect(missing.troubles.map(({ line, column }) => [line, column])).toEqual([
      [1, 'Base'],
      [1, 'Code'],
      [1, 'Said'],
    ]);
    const twice = readTables(
      [{ name: 'log.csv', text: 'No,Top,Base,Code,Said,Top\nW1,0,1,CLY,a,0\n' }],
      mappingOf(logTable),
    );
    expect(twice.troubles).toMatchObject([{ line: 1, column: 'Top' }]);
  });

  it('are told: a file that was not given, and one that the mapping does not name', () => {
    const { troubles } = readTables([{ name: 'other.csv', text: 'a' }], mappingOf(logTable));
    expect(troubles.map(({ file }) => file)).toEqual(['log.csv', 'other.csv']);
  });
});

describe('any text at all', () => {
  it('is read without a throw, and every row is in a record or told', () => {
    const cell = fc.oneof(
      fc.constantFrom('W1', '0', '1', '2', '3.5', '', 'CLY', '-1'),
      fc.string(),
    );
    const plain = cell.map((text) => text.replaceAll(/["\r\n,\uFEFF]/g, ''));
    fc.assert(
      fc.property(fc.array(fc.array(plain, { minLength: 2, maxLength: 6 })), (table) => {
        const { records, troubles } = logOf(...table.map((row) => row.join(',')));
        const rows = records.reduce((sum, { log }) => sum + log!.length, 0);
        const told = new Set(troubles.map(({ line }) => line)).size;
        expect(rows + told).toBe(table.length);
      }),
      { seed: 20, numRuns: 200 },
    );
  });

  it('with quotation marks and line ends anywhere does not throw', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('"', ',', '\n', '\r', 'a', '1', '\uFEFF') }),
        (text) => {
          const first = logOf(text);
          expect(logOf(text)).toEqual(first);
        },
      ),
      { seed: 21, numRuns: 200 },
    );
  });
});
