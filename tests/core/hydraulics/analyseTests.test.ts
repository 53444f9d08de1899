import { describe, expect, it } from 'vitest';
import { fileNames, well } from '../../demo-data/wells.ts';
import { analyse, analyseOne, byMethod, series, tested } from './inRecord.ts';
import { estimateOf, off, valueOf } from './values.ts';

/**
 * Reckoned from Theis 1935 for T 50 m²/d, S 0.001, r 0.075 m, 48 m³/d (2 m³/h), pumped 360 min; the
 * slope is 0.175905 m over a cycle for both.
 */
const pumped: [number, number][] = [
  [1, 0.72858],
  [2, 0.78153],
  [5, 0.85153],
  [10, 0.90448],
  [20, 0.95743],
  [50, 1.02743],
  [100, 1.08038],
  [200, 1.13333],
  [360, 1.17824],
];
const recovered: [number, number][] = [
  [1, 0.44987],
  [2, 0.39713],
  [5, 0.32777],
  [10, 0.27585],
  [20, 0.22494],
  [30, 0.19595],
  [60, 0.14866],
  [120, 0.10591],
  [240, 0.07],
];

describe('an exact test at a constant rate', () => {
  const analysis = analyseOne({
    kind: 'constantRate',
    restLevel: 0,
    rate: 2,
    series: series(pumped),
  });

  it.each(['cooperJacob', 'theis'] as const)('gives its transmissivity again by %s', (method) => {
    const result = byMethod(analysis, method);
    expect(off(valueOf(result, 'transmissivity'), 50)).toBeLessThan(0.001);
    expect(result!.used.count).toBe(9);
  });

  it('tells the slope over a cycle', () => {
    expect(valueOf(byMethod(analysis, 'cooperJacob'), 'slope')).toBeCloseTo(0.175905, 4);
  });

  it('tells no storage, since the readings are from the pumped well', () => {
    for (const { estimates } of analysis.results)
      expect(estimates.map(({ id }) => id)).not.toContain('storage');
  });

  it('has a derivative of Q/4πT', () => {
    const { points } = analysis.derivative!;
    expect(points.length).toBeGreaterThan(4);
    for (const { derivativeM } of points)
      expect(off(derivativeM, 48 / (4 * Math.PI * 50))).toBeLessThan(0.005);
  });

  it('hints at wide and even ground', () => {
    expect(analysis.hints.map(({ code }) => code)).toEqual(['stabilised']);
  });
});

describe('an exact recovery', () => {
  it('gives its transmissivity again', () => {
    const recovery = { kind: 'recovery', restLevel: 0, rate: 2, minutesPumped: 360 } as const;
    const analysis = analyseOne({ ...recovery, series: series(recovered) });
    const result = byMethod(analysis, 'theisRecovery');
    expect(off(valueOf(result, 'transmissivity'), 50)).toBeLessThan(0.001);
    expect(valueOf(result, 'slope')).toBeCloseTo(0.175905, 4);
    expect(result!.checks.find(({ code }) => code === 'recoveryToRest')!.holds).toBe(true);
    expect(analysis.readings.map(({ timeRatio }) => timeRatio)).toEqual([
      361, 181, 73, 37, 19, 13, 7, 4, 2.5,
    ]);
  });
});

/** What demo-data/README.md says that the readings were computed from. */
const demoWells = [
  { name: 'hand-drilled-32m', T: 60, C: 6e-5 },
  { name: 'two-screens-58m', T: 95, C: 3e-5 },
  { name: 'shallow-direct-action-9m', T: 25 },
  { name: 'telescoped-in-granite', T: 15, C: 1.2e-4 },
  { name: 'sixty-intervals-58m', T: 40, C: 1.5e-4 },
];

describe.each(demoWells)('the demo well $name', ({ name, T }) => {
  const file = fileNames.find((one) => one.startsWith(name))!;
  const analyses = analyse(well(file));

  it('gives its transmissivity again within some per cent, by each method', () => {
    for (const method of ['cooperJacob', 'theis', 'theisRecovery', 'edenHazel'] as const)
      for (const result of analyses.flatMap((one) => byMethod(one, method) ?? []))
        expect(off(valueOf(result, 'transmissivity'), T), method).toBeLessThan(0.08);
  });

  it('meets the conditions of the methods and leaves no reading out', () => {
    for (const { results, leftOut, missing } of analyses) {
      expect(results.flatMap(({ checks }) => checks.filter(({ holds }) => !holds))).toEqual([]);
      expect([leftOut, missing]).toEqual([[], []]);
    }
  });
});

describe.each(demoWells.filter(({ C }) => C !== undefined))(
  'the demo well $name',
  ({ name, C }) => {
    it('gives its well loss again within some per cent', () => {
      const analyses = analyse(well(fileNames.find((one) => one.startsWith(name))!));
      const steps = analyses.find(({ kind }) => kind === 'step')!;
      expect(off(valueOf(byMethod(steps, 'hantushBierschenk'), 'wellLoss'), C!)).toBeLessThan(0.1);
      expect(off(valueOf(byMethod(steps, 'edenHazel'), 'wellLoss'), C!)).toBeLessThan(0.04);
    });
  },
);

describe('a window by hand', () => {
  const test = { kind: 'constantRate', restLevel: 0, rate: 2, series: series(pumped) } as const;

  it('wins over the automatic one, for the line and the curve', () => {
    const windows = { 0: { fromMin: 5, toMin: 100 } };
    const [analysis] = analyse(tested([{ ...test, series: series(pumped) }]), { windows });
    for (const method of ['cooperJacob', 'theis'] as const)
      expect(byMethod(analysis!, method)!.used).toEqual({
        fromMin: 5,
        toMin: 100,
        count: 5,
        chosen: 'byHand',
      });
  });

  it('that holds fewer than two readings gives no line, and says that readings are missing', () => {
    const windows = { 0: { fromMin: 3, toMin: 6 } };
    const [analysis] = analyse(tested([{ ...test, series: series(pumped) }]), { windows });
    expect(byMethod(analysis!, 'cooperJacob')).toBeUndefined();
    expect(analysis!.missing).toEqual([{ what: 'enoughReadings', path: 'tests[0].series' }]);
  });
});

describe('intervals', () => {
  it('hold the value that they belong to', () => {
    for (const name of fileNames)
      for (const { results } of analyse(well(name)))
        for (const { value, interval } of results.flatMap(({ estimates }) => estimates)) {
          if (!interval) continue;
          expect(interval.lowest).toBeLessThanOrEqual(value);
          expect(interval.highest ?? Infinity).toBeGreaterThanOrEqual(value);
        }
  });

  it('have no upper end where the slope may be nil', () => {
    const noisy: [number, number][] = [
      [1, 1],
      [2, 1.3],
      [4, 0.9],
      [8, 1.4],
      [16, 0.95],
      [32, 1.35],
    ];
    const analysis = analyseOne({
      kind: 'constantRate',
      restLevel: 0,
      rate: 2,
      series: series(noisy),
    });
    const { interval } = estimateOf(byMethod(analysis, 'cooperJacob'), 'transmissivity');
    expect(interval!.lowest).toBeGreaterThan(0);
    expect(interval).not.toHaveProperty('highest');
  });
});

describe('what is missing', () => {
  it('is named with the field that would tell it', () => {
    expect(analyseOne({ kind: 'constantRate' }).missing).toEqual([
      { what: 'series', path: 'tests[0].series' },
      { what: 'restLevel', path: 'tests[0].restLevel' },
      { what: 'rate', path: 'tests[0].rate' },
    ]);
    const recovery = {
      kind: 'recovery',
      restLevel: 0,
      rate: 2,
      series: series(recovered),
    } as const;
    expect(analyseOne({ ...recovery, series: series(recovered) }).missing).toEqual([
      { what: 'minutesPumped', path: 'tests[0].minutesPumped' },
    ]);
  });

  it('is two rates for a step test', () => {
    const test = { kind: 'step', restLevel: 0, rate: 2 } as const;
    expect(analyseOne({ ...test, series: series(pumped) }).missing).toEqual([
      { what: 'steps', path: 'tests[0].series' },
    ]);
  });
});
