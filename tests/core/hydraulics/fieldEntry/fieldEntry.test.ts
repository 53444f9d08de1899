import { describe, expect, it } from 'vitest';
import { bucketRate } from '../../../../core/hydraulics/fieldEntry/bucketRate.ts';
import { minutesOf, readMinutes } from '../../../../core/hydraulics/fieldEntry/clockMinutes.ts';
import { sensorToTape } from '../../../../core/hydraulics/fieldEntry/sensorLevel.ts';

describe('times of readings', () => {
  it('by the clock count from the start', () => {
    expect(minutesOf(['7:31', '7h35', '08:00:30'], '07:30')).toEqual([1, 5, 30.5]);
  });

  it('count from the first where no start is told', () => {
    expect(minutesOf(['7:30', '7:45'])).toEqual([0, 15]);
  });

  it('go on past midnight', () => {
    expect(minutesOf(['23:50', '0:10', '1:10'], '23:30')).toEqual([20, 40, 100]);
  });

  it('as minutes stand as they are, with point or comma', () => {
    expect(minutesOf(['1', '2.5', '2,5'], '7:30')).toEqual([1, 2.5, 2.5]);
    expect(readMinutes('90')).toBe(90);
  });

  it('that are none are not known, and do not shift the others', () => {
    expect(minutesOf(['7:31', 'noon', '25:00', '7:61', '', '7:40'], '7:30')).toEqual([
      1,
      undefined,
      undefined,
      undefined,
      undefined,
      10,
    ]);
  });
});

describe('a rate by bucket and watch', () => {
  it('is litres over seconds in cubic metres an hour', () => {
    expect(bucketRate([{ litres: 20, seconds: 36 }])).toEqual({ rateM3h: 2 });
  });

  it('of several fills is all litres over all seconds, with their spread', () => {
    const fills = [
      { litres: 20, seconds: 30 },
      { litres: 20, seconds: 42 },
    ];
    const { rateM3h, spread } = bucketRate(fills)!;
    expect(rateM3h).toBeCloseTo(2, 9);
    expect(spread).toBeCloseTo((2.4 - 72 / 42) / 2, 9);
  });

  it('is not known where no fill has both', () => {
    expect(bucketRate([])).toBeUndefined();
    expect(bucketRate([{ litres: 20, seconds: 0 }])).toBeUndefined();
  });
});

describe('a sensor in the water', () => {
  it('shows a falling level as a growing depth below the datum', () => {
    const setting = { unit: 'm', tapeM: 10, valueThen: 12 } as const;
    expect(sensorToTape(11, setting)).toBe(11);
  });

  /** 1 kPa is 0.102 m of water; 1 psi 0.703 m (common practice). */
  it.each([
    ['kPa', 0.102],
    ['psi', 0.703],
    ['mbar', 0.0102],
  ] as const)('in %s by the weight of water', (unit, metres) => {
    expect(sensorToTape(0, { unit, tapeM: 10, valueThen: 1 })).toBeCloseTo(10 + metres, 3);
  });
});
