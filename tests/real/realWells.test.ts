import { describe, expect, it } from 'vitest';
import type { TableKind } from '../../core/exchange/tables/fields.ts';
import { readRows } from '../../core/exchange/tables/rows.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { intervalsOf } from '../../core/model/strata.ts';
import { readRecord } from '../../core/record/read.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { realTables, realWells } from './realWells.ts';

const tables = realTables();
const wells = realWells();

function well(name: string): WellRecord {
  const found = wells.find((one) => one.name === name);
  if (!found) throw new Error(`no well ${name}`);
  return found.record;
}

/** How many rows of a kind came into a record. */
const rowsIn: Readonly<Record<Exclude<TableKind, 'wells'>, (record: WellRecord) => number>> = {
  log: ({ log }) => log?.length ?? 0,
  sections: ({ bore }) => bore?.sections?.length ?? 0,
  pieces: ({ strings }) => (strings ?? []).flatMap(({ components }) => components).length,
  fills: ({ annulus }) => annulus?.length ?? 0,
  levels: ({ levels }) => levels?.length ?? 0,
  strikes: ({ strikes }) => strikes?.length ?? 0,
};

describe('the tables of real wells', () => {
  it('give 72 wells, of which 32 have a string of pipe', () => {
    expect(wells).toHaveLength(72);
    expect(wells.filter(({ record }) => record.strings)).toHaveLength(32);
    expect(new Set(wells.map(({ name }) => name)).size).toBe(72);
  });

  it.each(tables.map((one) => [one.folder, one] as const))(
    '%s: every row is in a record or told',
    (_, { mapping, files, records, troubles }) => {
      const kinds = new Set(mapping.tables.filter(({ sparse }) => !sparse).map(({ kind }) => kind));
      for (const kind of kinds) {
        if (kind === 'wells') continue;
        const names = mapping.tables.filter((one) => one.kind === kind).map(({ file }) => file);
        const given = files.filter(({ name }) => names.includes(name));
        const rows = given.reduce((sum, { text }) => sum + readRows(text, ',').rows.length, 0);
        const lost = troubles.filter(
          ({ file, kept }) => !kept && given.some((g) => g.name === file),
        );
        const told = new Set(lost.map(({ file, line }) => `${file}:${line}`)).size;
        const taken = records.reduce((sum, record) => sum + rowsIn[kind](record), 0);
        expect(`${kind} ${taken + told}`).toBe(`${kind} ${rows}`);
      }
    },
  );

  it('are told where a row could not come in, and nowhere else', () => {
    const told = tables.flatMap(({ folder, troubles }) =>
      troubles.map(({ file, line, column }) => `${folder}/${file}:${line} ${column}`),
    );
    expect(told).toEqual([
      'ags4/2370644/hdia.csv:13 HDIA_DIAM',
      'ags4/fettercairn-sa05/geol.csv:7 GEOL_BASE',
      'ags4/fettercairn-sa05/geol.csv:8 GEOL_TOP',
      'ags4/fettercairn-sa05/geol.csv:8 GEOL_BASE',
      'ags4/fettercairn-sa05/hdia.csv:1 ',
      'ags4/fettercairn-sa05/pipe.csv:2 PIPE_TYPE',
      'ags4/fettercairn-sa05/pipe.csv:3 PIPE_TYPE',
      'ags4/fettercairn-sa05/bkfl.csv:9 BKFL_BASE',
      'ags4/fettercairn-sa05/bkfl.csv:9 BKFL_LEG',
      'south-australia/casing.csv:6 CASE_FR',
      'south-australia/casing.csv:6 CASE_TO',
    ]);
  });

  it('are read the same every time', () => {
    expect(realWells()).toEqual(wells);
  });
});

describe('a real well', () => {
  it.each(wells.map(({ name, record }) => [name, record] as const))(
    '%s is a record without troubles, and resolves with each interval placed',
    (_, record) => {
      expect(readRecord(record)).toMatchObject({ kind: 'ok', troubles: [] });
      const placed = resolveWell(record).strata.flatMap(intervalsOf);
      expect(placed).toEqual(expect.arrayContaining([...(record.log ?? [])]));
    },
  );
});

// Each value was compared with the file named beside it, under tests/data.
describe('values of a driller’s log', () => {
  it('are those of ngis-lithology-a.csv, line 2, and the line’s words are whole', () => {
    const interval = well('ngis-lithology 10037380').log!.find(({ from }) => from === 8.8);
    expect(interval).toEqual({ from: 8.8, to: 11, material: 'shale', words: 'Shale broken' });
  });

  it('keep both materials that lines 65 and 66 give for one range', () => {
    const both = well('ngis-lithology 10048243').log!.filter(({ from }) => from === 12.8);
    expect(both).toEqual([
      { from: 12.8, to: 14.33, material: 'clay', words: 'Clay interlayere' },
      { from: 12.8, to: 14.33, material: 'gravel', words: 'Gravel small seam water supply' },
    ]);
    const { strata, findings } = resolveWell(well('ngis-lithology 10048243'));
    const [stratum, ...more] = strata.filter(({ fromM }) => fromM === 12.8);
    expect(more).toEqual([]);
    expect(intervalsOf(stratum!)).toEqual(both);
    expect(findings.filter(({ code }) => code.startsWith('log.'))).toMatchObject([
      { code: 'log.sameRange', severity: 'note', fromM: 12.8, toM: 14.33, values: { count: 2 } },
    ]);
  });

  it('are named from the description where the code is no material', () => {
    const log = well('ngis-lithology 10087707').log!;
    expect(log.map(({ material, words }) => [material, words])).toEqual([
      ['soil', 'Black soil'],
      ['sand', 'Fine sand loamy clays'],
      ['sand', 'Yellow white gravelly sands'],
      ['shale', 'Black shale'],
    ]);
  });

  it('are other, with their words, where nobody can tell', () => {
    const others = wells
      .filter(({ name }) => name.startsWith('ngis'))
      .flatMap(({ record }) => record.log!)
      .filter(({ material }) => material === 'other');
    expect(others.map(({ words }) => words).sort()).toEqual([
      'Base of carwoola beds',
      'Ckat',
      'Driller',
      'Grey - pink & yellow silty clay sandstone - gravel',
      'Very clayey',
      'Yellow silty clay - sandstone',
      'Yellow, silty clay sandstone top of carwoola bed',
    ]);
  });
});

describe('values of a site investigation hole', () => {
  it('are those of 2370644.ags: pipe of line 600, backfill of line 128', () => {
    const record = well('ags4/2370644 BH01');
    expect(record.strings).toMatchObject([
      {
        name: '1',
        components: [
          { kind: 'screen', outside: 19, length: 0.3 },
          { kind: 'plain', outside: 19, length: 12.5 },
        ],
        set: { by: 'bottom', depth: 12.8 },
      },
    ]);
    expect(record.annulus![2]).toEqual({
      from: 12.3,
      to: 13.3,
      fill: 'gravelPack',
      remark: 'Gravel backfill',
    });
  });

  it('are those of hindley-mill-fra01.ags, line 287: peat, its words whole', () => {
    const interval = well('ags4/hindley-mill-fra01 WS08').log!.find(({ from }) => from === 5.5);
    expect(interval).toEqual({
      from: 5.5,
      to: 6.1,
      material: 'peat',
      words:
        'Soft low strength plastic grey to black organic to very organic amorphous very clayey PEAT.',
    });
  });

  it('give no diameter to a pipe for which a112794-14.ags gives none', () => {
    const [string] = well('ags4/a112794-14 BH/CPR01').strings!;
    expect(string!.components).toEqual([
      { kind: 'screen', length: 3 },
      { kind: 'plain', length: 2 },
    ]);
  });
});

describe('a telescoped production well of 253 m', () => {
  const record = well('south-australia 155787');

  it('has the four drilled diameters of its drilling summary', () => {
    expect(record.bore!.sections).toEqual([
      { from: 0, to: 6, diameter: 550 },
      { from: 6, to: 96, diameter: 400 },
      { from: 96, to: 184, diameter: 275 },
      { from: 184, to: 253.4, diameter: 200 },
    ]);
  });

  it('has three strings, the last hanging in the one before, down to the sump of lines 179 to 183', () => {
    const resolved = resolveWell(record).strings;
    expect(resolved.map(({ topM, bottomM }) => [topM, bottomM])).toEqual([
      [0, 6],
      [0, 183],
      [177.85, 252.85],
    ]);
    expect(record.strings![2]!.components[0]).toEqual({
      kind: 'sump',
      material: 'SST',
      outside: 140,
      length: 3,
    });
  });

  it('has its cement around the string that it was pumped behind', () => {
    expect(record.annulus!.map(({ from, to, around }) => [from, to, around])).toEqual([
      [0, 6, 0],
      [0, 106, 1],
      [125, 183, 1],
    ]);
  });
});

describe('a well published in feet and inches', () => {
  const record = well('gwml2-usgs 403836085374401');

  it('has its casing to 193 ft and its slots of 0.040 in, lines 82 and 123 of the document', () => {
    expect(record.strings![0]!.components).toEqual([
      {
        kind: 'screen',
        material: 'steel',
        length: 1.524,
        slotWidth: 1.016,
        inside: 152.4,
      },
      {
        kind: 'plain',
        material: 'PVC; plastic',
        length: 58.8264,
        inside: 152.4,
      },
    ]);
  });

  it('has its height of 912.16 U.S. survey feet, line 178', () => {
    expect(record.site!.elevation).toBeCloseTo((912.16 * 1200) / 3937, 9);
  });

  it('has the log’s own gap from 141 to 152 ft, and nothing invented in it', () => {
    const feet = resolveWell(record).findings.find(({ code }) => code === 'log.gap')!;
    expect([feet.fromM, feet.toM]).toEqual([42.9768, 46.3296]);
  });
});

describe('a bore of three screens of one diameter', () => {
  // gwml2-bom/pieces.csv, lines 2 to 4: 0–96.6, 14.6–61.5 and 72.2–96.5 m, each 323 mm outside.
  const { findings } = resolveWell(well('gwml2-bom nsw.10042141'));

  it('is told that they cannot stand one in the other, whatever their walls', () => {
    expect(findings.filter(({ severity }) => severity === 'error')).toMatchObject([
      { code: 'string.noRoomInOuter', path: 'strings[2]', fromM: 14.6, toM: 61.5 },
      { code: 'string.noRoomInOuter', path: 'strings[2]', fromM: 72.2, toM: 96.5 },
    ]);
  });
});

describe('wells of which only inside diameters are published', () => {
  it('hold what the inside holds: 60.35 m of 152.4 mm are 1101 L', () => {
    const [inside] = resolveWell(well('gwml2-usgs 403836085374401')).contents;
    // π/4 × 0.1524² × (198 ft = 60.3504 m) = 1.10087 m³.
    expect(inside!.litres).toBeCloseTo(1100.87, 1);
  });

  it.each([
    ['gwml2-usgs 403836085374401', 152.4],
    ['gwml2-bom act.80000001', 100],
    ['dov-flanders ZUVP003', 50],
  ])('%s: inside %d mm, the outside not known', (name, insideMm) => {
    const pieces = resolveWell(well(name)).strings.flatMap((string) => string.pieces);
    for (const piece of pieces) {
      expect(piece.insideMm).toBeCloseTo(insideMm, 9);
      expect(piece.outsideMm).toBeUndefined();
    }
  });
});

describe('a monitoring well with its pipe above ground', () => {
  it('has the levels that its publisher computed from the same readings', () => {
    // grondwaterfilter_ZUVP003.xml gives ground at 23.99 m TAW and, beside each reading, peil_mtaw.
    const published = [23.12, 23.95, 23.16, 23.5, 23.83, 23.29, 23.67];
    const levels = resolveWell(well('dov-flanders ZUVP003')).levels;
    expect(levels.map(({ depthM }) => Number((23.99 - depthM).toFixed(2)))).toEqual(published);
  });
});
