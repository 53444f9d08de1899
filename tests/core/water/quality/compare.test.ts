import { describe, expect, it } from 'vitest';
import { holdGuidelines } from '../../../../core/water/guidelines/holdGuidelines.ts';
import { shippedGuidelines } from '../../../../core/water/guidelines/shippedGuidelines.ts';
import { judge, judgeOne, resultOf, sample } from './samples.ts';

describe('a result stands to a guideline value', () => {
  // WHO 2022: fluoride 1.5 mg/l, arsenic 10 µg/l, pH 6.5 to 8.5 usual.
  it.each([
    ['fluoride', { parameter: 'Fluoride', value: 1.5, unit: 'mg/l' }, 'within'],
    ['fluoride', { parameter: 'fluorures', value: 1.51, unit: 'mg/L' }, 'above'],
    ['fluoride', { parameter: 'Fluoreto', value: 1510, unit: 'µg/l' }, 'above'],
    ['arsenic', { parameter: 'As', value: 10, unit: 'µg/l' }, 'within'],
    ['arsenic', { parameter: 'Arsenic (As), total', value: 11, unit: 'ppb' }, 'above'],
  ] as const)('%s: %o is %s', (parameter, row, state) => {
    expect(judgeOne(row, parameter)).toMatchObject({ health: state, comparisons: [{ state }] });
  });

  it('from below, where a value is the least', () => {
    const sour = judgeOne({ parameter: 'pH', value: 6.1 }, 'pH');
    expect(sour.use).toBe('below');
    expect(sour.comparisons.find(({ value }) => value.key === 'corrosion')?.state).toBe('below');
    expect(judgeOne({ parameter: 'pH', value: 7, unit: 'mg/l' }, 'pH').use).toBe('unitUnknown');
    expect(judgeOne({ parameter: 'pH', value: 7, unit: 'pH units' }, 'pH').use).toBe('within');
  });

  it('by health and by use apart', () => {
    // WHO 2022: manganese 0.08 mg/l for health; stains from about 0.1 (from memory).
    const manganese = judgeOne({ parameter: 'Mn', value: 0.09, unit: 'mg/l' }, 'manganese');
    expect(manganese).toMatchObject({ health: 'above', use: 'within' });
    const iron = judgeOne({ parameter: 'Fer total', value: 2, unit: 'mg/l' }, 'iron');
    expect(iron.health).toBeUndefined();
    expect(iron.use).toBe('above');
  });

  it('and a value that is asked of chlorinated water alone counts for nothing else', () => {
    const turbid = judgeOne({ parameter: 'Turbidité', value: 2, unit: 'FNU' }, 'turbidity');
    expect(turbid.use).toBe('within');
    expect(turbid.comparisons.map(({ value, state }) => [value.key, state])).toEqual([
      ['chlorination', 'above'],
      ['seen', 'within'],
    ]);
    expect(turbid.last?.conversions).toEqual(['fnuAsNtu']);
  });
});

describe('a result below its detection limit', () => {
  it('is within where the limit reaches down to the value, and tells nothing where it does not', () => {
    const row = { parameter: 'Arsenic', unit: 'mg/l', below: true };
    expect(judgeOne({ ...row, value: 0.005 }, 'arsenic').health).toBe('within');
    expect(judgeOne({ ...row, value: 0.01 }, 'arsenic').health).toBe('within');
    expect(judgeOne({ ...row, value: 0.05 }, 'arsenic').health).toBe('limitTooHigh');
    expect(judgeOne({ ...row, value: 50, unit: 'µg/l' }, 'arsenic').health).toBe('limitTooHigh');
  });

  it('of bacteria is within at fewer than one in 100 ml, and tells nothing of a thinned sample', () => {
    const row = { parameter: 'E. coli', unit: 'CFU/100 ml', below: true };
    expect(judgeOne({ ...row, value: 1 }, 'eColi')).toMatchObject({
      health: 'within',
      band: 'low',
    });
    expect(judgeOne({ ...row, value: 10 }, 'eColi').health).toBe('limitTooHigh');
    expect(judgeOne({ ...row, value: 10 }, 'eColi').band).toBeUndefined();
  });
});

it('below a limit that nobody wrote was looked for, and tells nothing', () => {
  const lead = judgeOne({ parameter: 'Lead', below: true, unit: 'mg/l' }, 'lead');
  expect(lead).toMatchObject({ health: 'limitTooHigh', last: { conversions: ['limitUnwritten'] } });
  expect(lead.last?.value).toBeUndefined();
});

describe('bacteria', () => {
  // Bands of WHO/UNICEF household surveys (from memory): <1, 1–10, 11–100, >100 in 100 ml.
  it.each([
    [0, 'within', 'low'],
    [1, 'above', 'intermediate'],
    [10, 'above', 'intermediate'],
    [11, 'above', 'high'],
    [100, 'above', 'high'],
    [101, 'above', 'veryHigh'],
  ])('%d in 100 ml are %s the value, and rank %s', (value, health, band) => {
    const row = { parameter: 'Coliformes thermotolérants', value, unit: 'UFC/100 ml' };
    expect(judgeOne(row, 'eColi')).toMatchObject({ health, band });
  });

  it('are counted in other volumes too', () => {
    const row = { parameter: 'E. coli', value: 2, unit: 'CFU/ml' };
    expect(judgeOne(row, 'eColi')).toMatchObject({ last: { value: 200 }, band: 'veryHigh' });
  });
});

describe('the form of nitrate', () => {
  it('is taken from its field, its unit or its name', () => {
    const rows = [
      { parameter: 'Nitrate', value: 12, unit: 'mg/l', as: 'N' },
      { parameter: 'Nitrate', value: 12, unit: 'mg/l as N' },
      { parameter: 'NO3-N', value: 12, unit: 'mg/l' },
      { parameter: 'Azote nitrique', value: 12, unit: 'mg/l' },
      { parameter: 'Nitrates (N-NO3)', value: 12, unit: 'mg/l' },
      { parameter: 'Nitrate as N', value: 12, unit: 'mg/l' },
    ];
    for (const row of rows) {
      const { last, health } = judgeOne(row, 'nitrate');
      expect(last?.value, row.parameter).toBeCloseTo(53.1, 1);
      expect(health).toBe('above');
      expect(last?.conversions).toContain('form');
    }
    for (const parameter of ['NO3', 'NO3-', 'Nitrates (NO₃⁻)', 'Nitrato (NO3)'])
      expect(judgeOne({ parameter, value: 12, unit: 'mg/l' }, 'nitrate').last?.value).toBe(12);
  });

  it('is meant rounded: WHO prints 11.3 as N for 50 as NO3', () => {
    const row = { parameter: 'Nitrate', unit: 'mg/l', as: 'N' };
    expect(judgeOne({ ...row, value: 11.3 }, 'nitrate').health).toBe('within');
    expect(judgeOne({ ...row, value: 11.4 }, 'nitrate').health).toBe('above');
  });

  it('is no form where it is a word: total iron is iron', () => {
    const iron = { parameter: 'Iron', value: 0.2, unit: 'mg/l', as: 'total' };
    expect(judgeOne(iron, 'iron')).toMatchObject({ use: 'within', last: { value: 0.2 } });
    const nitrate = { parameter: 'Nitrate', value: 20, unit: 'mg/l', as: 'total' };
    expect(judgeOne(nitrate, 'nitrate').health).toBe('formUnknown');
  });

  it('that nobody wrote is left open only where it matters', () => {
    const row = { parameter: 'Nitrate', unit: 'mg/l' };
    expect(judgeOne({ ...row, value: 8 }, 'nitrate').health).toBe('within');
    expect(judgeOne({ ...row, value: 20 }, 'nitrate').health).toBe('formUnknown');
    expect(judgeOne({ ...row, value: 60 }, 'nitrate').health).toBe('above');
    const { last } = judgeOne({ ...row, value: 20 }, 'nitrate');
    expect(last?.value).toBeUndefined();
    expect(last?.conversions).toEqual(['formUnwritten']);
  });
});

describe('what cannot be compared', () => {
  it('is said: no unit, an unknown one, nothing tested', () => {
    expect(judgeOne({ parameter: 'Iron', value: 0.2 }, 'iron').use).toBe('unitUnknown');
    expect(judgeOne({ parameter: 'Iron', value: 0.2, unit: 'spoons' }, 'iron').use).toBe(
      'unitUnknown',
    );
    expect(judgeOne({ parameter: 'Iron', unit: 'mg/l' }, 'iron').use).toBe('notTested');
    expect(judgeOne({ parameter: 'pH', value: 7 }, 'iron').use).toBe('notTested');
  });

  it('is listed where the set does not know the parameter', () => {
    const { unknown } = judge([
      sample('2026-02-10', { parameter: 'Zinc', value: 1, unit: 'mg/l' }),
    ]);
    expect(unknown).toEqual([{ path: 'quality[0].results[0]', written: 'Zinc' }]);
  });
});

describe('of several results', () => {
  const iron = (value: number) => ({ parameter: 'Iron', value, unit: 'mg/l' });

  it('the last day counts, whatever the order of rows; those without a day come first', () => {
    const result = judge([
      sample('2026-03-01', iron(0.1)),
      sample('2026-01-01', iron(2)),
      sample(undefined, iron(3)),
    ]);
    expect(resultOf(result, 'iron')).toMatchObject({ use: 'within', last: { sample: 0 } });
    expect(resultOf(result, 'iron').readings.map(({ sample: at }) => at)).toEqual([2, 1, 0]);
  });

  it('of one sample the one that stands worst counts', () => {
    const result = judge([sample('2026-03-01', iron(0.1), iron(0.5), iron(0.2))]);
    expect(resultOf(result, 'iron')).toMatchObject({
      use: 'above',
      last: { path: 'quality[0].results[1]', value: 0.5 },
    });
  });
});

it('a country’s own value holds in its own form', () => {
  const words = { en: 'Ours', fr: 'Ours', pt: 'Ours' };
  const held = holdGuidelines('ours', [
    {
      id: 'ours',
      version: '1',
      name: words,
      basedOn: 'who2022',
      sources: { decree: { title: words, mark: 'read' } },
      parameters: {
        nitrate: {
          values: {
            health: { bound: 'most', value: 10, as: 'N', basis: 'health', source: 'decree' },
          },
        },
      },
    },
    ...shippedGuidelines,
  ]);
  if (!held.ok) throw new Error(held.error.sentence);
  const row = { parameter: 'Nitrate', unit: 'mg/l', as: 'NO3' };
  expect(judgeOne({ ...row, value: 44 }, 'nitrate', held.value).health).toBe('within');
  expect(judgeOne({ ...row, value: 45 }, 'nitrate', held.value).health).toBe('above');
});
