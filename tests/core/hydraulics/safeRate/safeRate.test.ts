import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import type { RateChange, SafeRateInputs } from '../../../../core/hydraulics/results.ts';
import { safeRate } from '../../../../core/hydraulics/safeRate/safeRate.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import type { PumpingTest } from '../../../../core/record/water.ts';
import { fileNames, well } from '../../../demo-data/wells.ts';
import { record } from '../../model/well.ts';
import { tested } from '../inRecord.ts';
import { drawdownOf, logMinutes } from '../synthetic.ts';
import { off } from '../values.ts';

const ideal = { T: 5, S: 0.001, r: 0.075 };
const C = 1e-3;
const restM = 10;
const yearMin = 365 * 1440;

const pipe = { outside: 110, wall: 4.2 } as const;
const strings = [
  {
    set: { by: 'stickUp' as const, height: 0 },
    components: [
      { kind: 'screen' as const, count: 4, length: 3, ...pipe },
      { kind: 'plain' as const, count: 10, length: 3, ...pipe },
    ],
  },
];

const steps = [12, 24, 36, 48].map((rateM3d, at) => ({ fromMin: 60 * at, rateM3d }));

const stepTest: PumpingTest = {
  kind: 'step',
  datum: 'ground',
  restLevel: restM,
  series: steps.flatMap(({ fromMin, rateM3d }, step) =>
    [20, 25, 30, 40, 50, 60].map((minutes) => ({
      minutes,
      reading: restM + drawdownOf(ideal, steps, fromMin + minutes) + C * rateM3d ** 2,
      rate: rateM3d / 24,
      step: step + 1,
    })),
  ),
};

const constantRate: PumpingTest = {
  kind: 'constantRate',
  datum: 'ground',
  restLevel: restM,
  rate: 1.5,
  series: logMinutes(1440, 40).map((minutes) => ({
    minutes,
    reading: restM + drawdownOf(ideal, [{ fromMin: 0, rateM3d: 36 }], minutes) + C * 36 ** 2,
  })),
};

const inputs: SafeRateInputs = { waterOverIntakeM: 1, waterOverScreenM: 0, drySeasonLevelM: 12 };

function ask(
  tests: PumpingTest[],
  also: Partial<SafeRateInputs> = {},
  beside: Partial<WellRecord> = {},
) {
  const one = tested(tests, { strings, ...beside });
  const answer = safeRate(one, resolveWell(one), { ...inputs, ...also });
  if (!answer.known) throw new Error(answer.missing.map(({ what }) => what).join());
  return answer.value;
}

/** Drawdown of the ideal well at the end of a year, by Theis with every day's pumping superposed. */
function afterAYear(rateM3d: number, hours: number) {
  const days = hours === 24 ? [0] : Array.from({ length: 365 }, (_, day) => day * 1440);
  const rates = days.flatMap((fromMin): RateChange[] =>
    hours === 24
      ? [{ fromMin, rateM3d }]
      : [
          { fromMin, rateM3d },
          { fromMin: fromMin + hours * 60, rateM3d: 0 },
        ],
  );
  const end = hours === 24 ? yearMin : 364 * 1440 + hours * 60;
  return drawdownOf(ideal, rates, end) + C * rateM3d ** 2;
}

describe('the safe rate of an ideal well', () => {
  it.each([
    { by: 'a constant-rate and a step test', tests: [stepTest, constantRate] },
    { by: 'a step test alone', tests: [stepTest] },
  ])('by $by draws the water down to the limit after a year', ({ tests }) => {
    const { byDrawdown, availableM, deepestLevelM, setBy } = ask(tests);
    expect([deepestLevelM, setBy, availableM]).toEqual([30, 'screen', 18]);
    expect(off(afterAYear(byDrawdown.value * 24, 24), 18)).toBeLessThan(0.005);
  });

  it('holds for some hours a day as well as for every day superposed', () => {
    const { byDrawdown } = ask([stepTest, constantRate], { hoursADay: 8 });
    expect(byDrawdown.value).toBeGreaterThan(ask([stepTest, constantRate]).byDrawdown.value);
    expect(off(afterAYear(byDrawdown.value * 24, 8), 18)).toBeLessThan(0.02);
  });

  it('goes by the last readings where a boundary was met', () => {
    const image = { ...ideal, r: 40 };
    const both = (rateM3d: number, at: number) =>
      [ideal, image].reduce((sum, one) => sum + drawdownOf(one, [{ fromMin: 0, rateM3d }], at), 0);
    const bounded: PumpingTest = {
      ...constantRate,
      series: logMinutes(2880, 45).map((minutes) => ({
        minutes,
        reading: restM + both(36, minutes),
      })),
    };
    const { byDrawdown, assumptions } = ask([bounded]);
    expect(assumptions.map(({ code }) => code)).toContain('lateSlope');
    expect(off(both(byDrawdown.value * 24, yearMin), 18)).toBeLessThan(0.03);
  });

  it('has an interval that holds it', () => {
    const { byDrawdown, atRate } = ask([stepTest, constantRate], { askedM3h: 1 });
    for (const { value, interval } of [byDrawdown, atRate.drawdown, atRate.pumpingLevel]) {
      expect(interval!.lowest).toBeLessThanOrEqual(value);
      expect(interval!.highest).toBeGreaterThanOrEqual(value);
    }
  });

  it('tells the pumping level and the intake at the rate asked for', () => {
    const { atRate } = ask([stepTest, constantRate], { askedM3h: 1 });
    const level = 12 + afterAYear(24, 24);
    expect(off(atRate.pumpingLevel.value, level)).toBeLessThan(0.001);
    expect(off(atRate.intake.value, level + 1)).toBeLessThan(0.001);
  });

  it('ends at the rate that was tested', () => {
    const { safe, byDrawdown, checks } = ask([constantRate], { drySeasonLevelM: 2 });
    expect(byDrawdown.value).toBeGreaterThan(1.5);
    expect(safe.value).toBeCloseTo(1.5, 9);
    expect(checks).toContainEqual({
      code: 'withinTested',
      holds: false,
      values: { tested: 1.5, rate: byDrawdown.value },
    });
  });

  it('is nil where the margins reach above the water', () => {
    const { safe, checks } = ask([constantRate], { drySeasonLevelM: 31 });
    expect(safe.value).toBe(0);
    expect(checks.find(({ code }) => code === 'waterAvailable')!.holds).toBe(false);
  });

  it('is set by the intake where that is the shallower, and says when it hangs too high', () => {
    const value = ask([stepTest, constantRate], { intakeM: 25, askedM3h: 1.5 });
    expect([value.deepestLevelM, value.setBy]).toEqual([24, 'intake']);
    const failing = value.checks.filter(({ holds }) => !holds).map(({ code }) => code);
    expect(failing).toEqual(expect.arrayContaining(['askedWithinSafe', 'intakeDeepEnough']));
  });

  it('says where it takes the well loss to be in the line', () => {
    expect(ask([constantRate]).assumptions.map(({ code }) => code)).toContain('lossInLine');
    expect(ask([stepTest, constantRate]).assumptions.map(({ code }) => code)).toContain(
      'lossFromSteps',
    );
  });
});

describe('the level of the dry season', () => {
  const levels = [12, 13.5, 11].map((reading) => ({
    reading,
    datum: 'ground' as const,
    state: 'static' as const,
  }));
  const bare = { waterOverIntakeM: 1, waterOverScreenM: 0 };
  const answer = (beside: Partial<WellRecord>) => {
    const one = tested([constantRate], { strings, ...beside });
    return safeRate(one, resolveWell(one), bare);
  };

  it('is what the record expects, else the deepest that was read at rest', () => {
    const expected = answer({ levels, layingOut: { drySeasonLevel: 15 } });
    expect(expected).toMatchObject({ value: { drySeasonLevelM: 15 } });
    expect(answer({ levels })).toMatchObject({ value: { drySeasonLevelM: 13.5 } });
  });

  it('is said to be an estimate where the swing of the year tells it', () => {
    const one = tested([constantRate], { strings });
    const codes = (inputs: object) => {
      const given = safeRate(one, resolveWell(one), { ...bare, drySeasonLevelM: 15, ...inputs });
      return given.known ? given.value.assumptions.map(({ code }) => code) : [];
    };
    expect(codes({})).toContain('drySeasonSaid');
    expect(codes({ drySeasonEstimated: true })).toContain('drySeasonEstimated');
    expect(codes({ drySeasonEstimated: true })).not.toContain('drySeasonSaid');
  });

  it('is named where nothing tells it', () => {
    expect(answer({})).toEqual({
      known: false,
      missing: [{ what: 'drySeasonLevel', path: 'layingOut.drySeasonLevel' }],
    });
  });
});

describe('a safe rate that cannot be reckoned', () => {
  it('names all that is missing', () => {
    const empty = record({});
    const answer = safeRate(empty, resolveWell(empty), {
      waterOverIntakeM: 1,
      waterOverScreenM: 0,
    });
    expect(answer).toMatchObject({
      known: false,
      missing: [{ what: 'pumpingTest' }, { what: 'drySeasonLevel' }, { what: 'screenOrIntake' }],
    });
  });
});

describe('the demo wells', () => {
  it('have a safe rate wherever they were tested', () => {
    for (const name of fileNames) {
      const one = well(name);
      const answer = safeRate(one, resolveWell(one), { waterOverIntakeM: 1, waterOverScreenM: 0 });
      expect(answer.known, name).toBe((one.tests ?? []).length > 0);
    }
  });
});
