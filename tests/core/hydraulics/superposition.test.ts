import { describe, expect, it } from 'vitest';
import { curveAt } from '../../../core/hydraulics/fit/theisFit.ts';
import { stoppedAt } from '../../../core/hydraulics/ratesOverTime.ts';
import type { RateChange } from '../../../core/hydraulics/results.ts';
import { analyse, analyseOne, byMethod, tested } from './inRecord.ts';
import { drawdownOf, logMinutes } from './synthetic.ts';
import { off, valueOf } from './values.ts';

const ideal = { T: 30, S: 0.0005, r: 0.08 };
const minutes = logMinutes(480, 30);
const perHour = (rateM3d: number) => rateM3d / 24;

/** A constant-rate test whose rates are written beside the readings. */
function withRates(rates: readonly RateChange[], at: readonly number[]) {
  return {
    kind: 'constantRate' as const,
    restLevel: 10,
    series: at.map((one) => ({
      minutes: one,
      reading: 10 + drawdownOf(ideal, rates, one),
      rate: perHour(rates.findLast(({ fromMin }) => fromMin < one)?.rateM3d ?? 0),
    })),
  };
}

describe('rates that change during a test', () => {
  const times = [0, 1, 2, 4, 8, 15, 30, 60, 61, 62, 64, 68, 75, 90, 120, 180, 240, 300, 420, 480];
  const rates = [
    { fromMin: 0, rateM3d: 60 },
    { fromMin: 60, rateM3d: 40 },
  ];
  const analysis = analyseOne(withRates(rates, times.slice(1)));

  it('are read from the readings', () => {
    expect(analysis.rates.map(({ fromMin }) => fromMin)).toEqual([0, 60]);
    expect(analysis.rates[1]!.rateM3d).toBeCloseTo(40, 9);
  });

  it('are superposed by the curve and by the line', () => {
    for (const method of ['theis', 'cooperJacob'] as const) {
      const result = byMethod(analysis, method);
      expect(off(valueOf(result, 'transmissivity'), ideal.T), method).toBeLessThan(0.002);
      expect(result!.assumptions.map(({ code }) => code)).toContain('ratesSuperposed');
    }
    expect(byMethod(analysis, 'cooperJacob')!.source).toBe('birsoySummers1980');
  });

  it('make the curve again at any time', () => {
    const { curve } = byMethod(analysis, 'theis')!;
    for (const at of [30, 60, 70, 400])
      expect(off(curveAt(curve!, analysis.rates, at), drawdownOf(ideal, rates, at))).toBeLessThan(
        0.001,
      );
  });
});

describe('a pump that began late', () => {
  it('is superposed from when it began, and its readings before are left out', () => {
    const rates = [{ fromMin: 5, rateM3d: 48 }];
    const analysis = analyseOne(withRates(rates, [1, 5, 6, 7, 9, 12, 20, 35, 60, 120, 240, 480]));
    expect(analysis.rates).toEqual([{ fromMin: 5, rateM3d: 48 }]);
    expect(analysis.leftOut.map(({ why, minutes: at }) => [why, at])).toEqual([
      ['notAfterStart', 1],
      ['notAfterStart', 5],
    ]);
    const result = byMethod(analysis, 'theis');
    expect(off(valueOf(result, 'transmissivity'), ideal.T)).toBeLessThan(0.001);
    expect(result!.assumptions).toContainEqual({ code: 'delayedStart', values: { minutes: 5 } });
  });
});

describe('rates that hardly differ', () => {
  it('count as one, and their spread is said', () => {
    const test = withRates([{ fromMin: 0, rateM3d: 48 }], minutes);
    const series = test.series.map((one, at) => ({ ...one, rate: at % 2 ? 1.97 : 2.03 }));
    const analysis = analyseOne({ ...test, rate: 2, series });
    expect(analysis.rates).toEqual([{ fromMin: 0, rateM3d: 48 }]);
    const { values } = byMethod(analysis, 'theis')!.assumptions.find(
      ({ code }) => code === 'rateAveraged',
    )!;
    expect(values.spread).toBeCloseTo(1.5, 6);
  });
});

describe('a recovery after steps', () => {
  it('is superposed over the steps before it', () => {
    const stepped = [24, 36, 48].map((rateM3d, at) => ({ fromMin: 60 * at, rateM3d }));
    const steps = stepped.flatMap(({ fromMin, rateM3d }, step) =>
      [1, 2, 5, 10, 20, 40, 60].map((at) => ({
        minutes: at,
        reading: drawdownOf(ideal, stepped, fromMin + at),
        rate: perHour(rateM3d),
        step: step + 1,
      })),
    );
    const recovered = logMinutes(180, 20).map((at) => ({
      minutes: at,
      reading: drawdownOf(ideal, stoppedAt(stepped, 180), 180 + at),
    }));
    const [, recovery] = analyse(
      tested([
        { kind: 'step', restLevel: 0, minutesPumped: 180, series: steps },
        { kind: 'recovery', restLevel: 0, series: recovered },
      ]),
    );
    const result = byMethod(recovery!, 'theisRecovery');
    expect(off(valueOf(result, 'transmissivity'), ideal.T)).toBeLessThan(0.001);
    expect(result!.assumptions.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['ratesSuperposed', 'rateFromPumpingTest', 'pumpedFromPumpingTest']),
    );
  });
});
