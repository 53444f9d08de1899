import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { reduceTest } from '../../../../core/hydraulics/reduce/reduceTest.ts';
import { reduceOne, tested } from '../inRecord.ts';

const strings = [
  {
    set: { by: 'stickUp' as const, height: 0.45 },
    components: [{ kind: 'plain' as const, count: 10, length: 3, outside: 110, wall: 4.2 }],
  },
];

const codes = (reduced: { assumptions: readonly { code: string }[] }) =>
  reduced.assumptions.map(({ code }) => code);

describe('readings of a test', () => {
  it('become drawdowns below rest and depths below ground', () => {
    const series = [{ minutes: 10, reading: 11.37 }];
    const { readings, restDepthM } = reduceOne(
      { kind: 'constantRate', datum: 'casingTop', restLevel: 10.27, rate: 2.4, series },
      { strings },
    );
    expect(restDepthM).toBe(9.82);
    expect(readings).toEqual([
      {
        path: 'tests[0].series[0]',
        minutes: 10,
        drawdownM: 1.1,
        depthM: 10.92,
        rateM3d: expect.closeTo(57.6, 9),
      },
    ]);
  });

  it('have no depth where the datum or the casing top is not known', () => {
    const series = [{ minutes: 10, reading: 11.37 }];
    const test = { kind: 'constantRate' as const, restLevel: 10.27, rate: 2.4, series };
    expect(reduceOne(test).readings[0]).not.toHaveProperty('depthM');
    expect(reduceOne({ ...test, datum: 'casingTop' }).readings[0]).not.toHaveProperty('depthM');
  });

  it('are left out with the reason where they cannot be used', () => {
    const { readings, leftOut } = reduceOne({
      kind: 'constantRate',
      datum: 'ground',
      restLevel: 10,
      rate: 2,
      pumpIntake: 20,
      series: [
        { minutes: 0, reading: 10 },
        { minutes: 1, reading: 9.99 },
        { minutes: 2, reading: 10.4 },
        { minutes: 30, reading: 10.5 },
        { minutes: 4, reading: 10.6 },
        { minutes: 5, reading: 25 },
        { minutes: 6, reading: NaN },
        { minutes: NaN, reading: 10.7 },
        { minutes: 8, reading: 10.8 },
      ],
    });
    expect(readings.map(({ minutes }) => minutes)).toEqual([2, 4, 8]);
    expect(Object.fromEntries(leftOut.map(({ path, why }) => [path, why]))).toEqual({
      'tests[0].series[0]': 'notAfterStart',
      'tests[0].series[1]': 'aboveRest',
      'tests[0].series[3]': 'outOfOrder',
      'tests[0].series[5]': 'belowIntake',
      'tests[0].series[6]': 'noReading',
      'tests[0].series[7]': 'noMinutes',
    });
  });
});

describe('the rest level', () => {
  const series = [{ minutes: 5, reading: 11 }];
  const test = { kind: 'constantRate' as const, datum: 'casingTop' as const, rate: 2, series };
  const level = { reading: 9.9, datum: 'ground' as const, state: 'static' as const };

  it('is the last one at rest before the test where the test tells none', () => {
    const reduced = reduceOne(
      { ...test, startedAt: '2026-01-10T07:00Z' },
      {
        strings,
        levels: [
          { ...level, at: '2026-01-10T06:40Z' },
          { ...level, at: '2026-03-01T06:40Z', reading: 12 },
        ],
      },
    );
    expect(reduced.restReadM).toBeCloseTo(10.35, 9);
    expect(codes(reduced)).toContain('restFromLevels');
  });

  it('is the reading at 0 min where there is one', () => {
    const reduced = reduceOne({ ...test, series: [{ minutes: 0, reading: 10.2 }, ...series] });
    expect(reduced.restReadM).toBe(10.2);
    expect(codes(reduced)).toContain('restFromSeries');
  });

  it('of a recovery is that of the pumping before it', () => {
    const well = tested([
      { ...test, restLevel: 10.2, minutesPumped: 60 },
      { kind: 'recovery', datum: 'casingTop', series: [{ minutes: 5, reading: 10.5 }] },
    ]);
    const reduced = reduceTest(well, resolveWell(well), 1);
    expect(reduced.restReadM).toBe(10.2);
    expect(codes(reduced)).toContain('restFromPumpingTest');
  });
});

describe('steps', () => {
  const rows = (minutes: readonly number[], rate: number, from: number) =>
    minutes.map((at) => ({ minutes: at, reading: from + at / 100, rate }));

  it('follow each other by their numbers, as long as their readings tell', () => {
    const { readings, rates } = reduceOne({
      kind: 'step',
      restLevel: 0,
      series: [
        ...rows([10, 60], 1, 1).map((row) => ({ ...row, step: 1 })),
        ...rows([10, 60], 2, 2).map((row) => ({ ...row, step: 2 })),
      ],
    });
    expect(rates).toEqual([
      { fromMin: 0, rateM3d: 24 },
      { fromMin: 60, rateM3d: 48 },
    ]);
    expect(readings.map(({ minutes, step }) => [minutes, step!.minutes])).toEqual([
      [10, 10],
      [60, 60],
      [70, 10],
      [120, 60],
    ]);
  });

  it('are as long as their share of the whole where the last reading came earlier', () => {
    const { rates, pumpedMin } = reduceOne({
      kind: 'step',
      restLevel: 0,
      minutesPumped: 120,
      series: [...rows([10, 55], 1, 1), ...rows([10, 55], 2, 2)],
    });
    expect(rates.map(({ fromMin }) => fromMin)).toEqual([0, 60]);
    expect(pumpedMin).toBe(120);
  });

  it('without numbers are told by minutes that start again or a rate that changes', () => {
    const reduced = reduceOne({
      kind: 'step',
      restLevel: 0,
      series: [...rows([10, 60], 1, 1), ...rows([10, 60], 2, 2)],
    });
    expect(reduced.readings.map(({ step }) => step!.number)).toEqual([1, 1, 2, 2]);
    expect(codes(reduced)).toContain('stepsByRate');
  });

  it('may have minutes that run on', () => {
    const reduced = reduceOne({
      kind: 'step',
      restLevel: 0,
      minutesPumped: 120,
      series: [...rows([10, 60], 1, 1), ...rows([70, 120], 2, 2)],
    });
    expect(reduced.readings.map(({ minutes }) => minutes)).toEqual([10, 60, 70, 120]);
    expect(codes(reduced)).toContain('minutesRunOn');
  });

  it('without a rate are left out', () => {
    const bare = (step: number, from: number) =>
      [10, 60].map((minutes) => ({ minutes, reading: from, step }));
    const reduced = reduceOne({
      kind: 'step',
      restLevel: 0,
      series: [...rows([10, 60], 1, 1).map((row) => ({ ...row, step: 1 })), ...bare(2, 3)],
    });
    expect(reduced.leftOut.map(({ why }) => why)).toEqual(['noRate', 'noRate']);
  });
});

describe('the pumping before a recovery', () => {
  const pumping = {
    kind: 'constantRate' as const,
    startedAt: '2026-01-10T07:00Z',
    restLevel: 0,
    rate: 2,
    minutesPumped: 60,
    series: [{ minutes: 60, reading: 1 }],
  };
  const recovery = {
    kind: 'recovery' as const,
    restLevel: 0,
    series: [{ minutes: 5, reading: 0.5 }],
  };

  it('tells its rate and how long it lasted', () => {
    const well = tested([pumping, { ...recovery, startedAt: '2026-01-10T08:00Z' }]);
    const reduced = reduceTest(well, resolveWell(well), 1);
    expect(reduced.rates).toEqual([{ fromMin: 0, rateM3d: 48 }]);
    expect(reduced.readings[0]!.timeRatio).toBe(13);
  });

  it('is another where the times do not meet', () => {
    const well = tested([pumping, { ...recovery, startedAt: '2026-01-12T08:00Z' }]);
    const reduced = reduceTest(well, resolveWell(well), 1);
    expect(reduced.missing.map(({ what }) => what)).toEqual(['rate', 'minutesPumped']);
  });
});
