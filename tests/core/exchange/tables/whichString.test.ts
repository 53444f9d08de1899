import { describe, expect, it } from 'vitest';
import { readMapping, readTables } from '../../../../core/exchange/index.ts';

const range = { from: { column: 'From', unit: 'm' }, to: { column: 'To', unit: 'm' } };
const named = { string: { column: 'Name' } };
const mapping = readMapping({
  tables: [
    {
      ...{ kind: 'pieces', file: 'pipe.csv', well: 'No' },
      fields: {
        ...{ ...range, ...named, kind: { value: 'plain' } },
        outside: { column: 'OD', unit: 'mm' },
      },
    },
    {
      ...{ kind: 'fills', file: 'fill.csv', well: 'No' },
      fields: {
        ...{ ...range, ...named, fill: { value: 'gravelPack' } },
        aroundDiameter: { column: 'OD', unit: 'mm' },
      },
    },
  ],
});

/** Two strings of one diameter that go by different names, the outer one first. */
const pipes = ['No,From,To,Name,OD', 'W,0,6,outer,200', 'W,0,30,inner,110', 'W,30,36,inner,90'];

function fillsOf(...rows: string[]) {
  if (!mapping.ok) throw new Error(mapping.error.sentence);
  const { records, troubles } = readTables(
    [
      { name: 'pipe.csv', text: pipes.join('\n') },
      { name: 'fill.csv', text: ['No,From,To,Name,OD', ...rows].join('\n') },
    ],
    mapping.value,
  );
  const fills = (records[0]?.annulus ?? []).map(({ from, to, around }) => [from, to, around]);
  return { fills, troubles };
}

describe('the string that a fill surrounds', () => {
  it('is that of its name, its diameter, or both', () => {
    expect(fillsOf('W,0,5,outer,').fills).toEqual([[0, 5, 0]]);
    expect(fillsOf('W,0,5,inner,').fills).toEqual([[0, 5, 1]]);
    expect(fillsOf('W,0,5,,110').fills).toEqual([[0, 5, 1]]);
    expect(fillsOf('W,0,5,inner,110').fills).toEqual([[0, 5, 1]]);
    expect(fillsOf('W,31,33,,90').fills).toEqual([[31, 33, 1]]);
  });

  it('is left open where the row says neither', () => {
    expect(fillsOf('W,0,5,,')).toEqual({ fills: [[0, 5, undefined]], troubles: [] });
  });

  it('is none where name and diameter do not belong together, which is told', () => {
    const { fills, troubles } = fillsOf('W,0,5,outer,110');
    expect(fills).toEqual([]);
    expect(troubles).toMatchObject([{ file: 'fill.csv', line: 2, column: 'Name', kept: false }]);
    expect(troubles[0]?.sentence).toBe(
      'No string of this well answers to outer; the row was left out.',
    );
  });

  it('may end above the fill, as when a pack goes on under the foot', () => {
    expect(fillsOf('W,36,40,inner,').fills).toEqual([[36, 40, 1]]);
  });

  it('does not change the order of the fills, which is by depth', () => {
    const { fills } = fillsOf('W,20,30,inner,', 'W,0,8,inner,', 'W,0,5,outer,', 'W,8,20,inner,');
    expect(fills.map(([from, to]) => [from, to])).toEqual([
      [0, 5],
      [0, 8],
      [8, 20],
      [20, 30],
    ]);
  });
});
