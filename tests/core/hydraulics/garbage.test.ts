import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { safeRate } from '../../../core/hydraulics/safeRate/safeRate.ts';
import { seriesNotes } from '../../../core/hydraulics/seriesNotes.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { levelDatums, type PumpingTest } from '../../../core/record/water.ts';
import { known } from '../../../core/base/known.ts';
import { analyse, tested } from './inRecord.ts';

const amount = fc.oneof(
  fc.constantFrom(0, 1, 1e-9, 1e12),
  fc.double({ min: 0, max: 2000, noNaN: true }),
);
const metres = fc.oneof(
  fc.constantFrom(0, 10, -5),
  fc.double({ min: -100, max: 500, noNaN: true }),
);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

const reading = fc
  .record({ minutes: amount, reading: metres, rate: maybe(amount), step: maybe(fc.nat(4)) })
  .map(({ minutes, reading: readM, ...others }) => ({ minutes, reading: readM, ...known(others) }));

const test: fc.Arbitrary<PumpingTest> = fc
  .record({
    kind: fc.constantFrom('step' as const, 'constantRate' as const, 'recovery' as const),
    startedAt: maybe(fc.constantFrom('2026-01-10', '2026-01-10T07:00Z', 'soon')),
    datum: maybe(fc.constantFrom(...levelDatums)),
    restLevel: maybe(metres),
    rate: maybe(amount),
    minutesPumped: maybe(amount),
    pumpIntake: maybe(metres),
    series: maybe(fc.array(reading, { maxLength: 25 })),
  })
  .map(({ kind, ...others }) => ({ kind, ...known(others) }));

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

describe('tests as nobody would write them', () => {
  it('never throw, and give finite numbers or none', () => {
    fc.assert(
      fc.property(fc.array(test, { maxLength: 4 }), (tests) => {
        const well = tested(tests);
        const analyses = analyse(well);
        expect(analyses).toHaveLength(tests.length);
        for (const { results, derivative, hints } of analyses)
          for (const number of numbersIn([results, derivative, hints]))
            expect(Number.isFinite(number)).toBe(true);
        const answer = safeRate(well, resolveWell(well), {
          waterOverIntakeM: 1,
          waterOverScreenM: 0,
          intakeM: 30,
          drySeasonLevelM: 12,
        });
        for (const number of numbersIn(answer)) expect(Number.isFinite(number)).toBe(true);
      }),
      { seed: 15, numRuns: 300 },
    );
  });

  it('have each reading among those reduced or those left out, once', () => {
    fc.assert(
      fc.property(test, (one) => {
        const [analysis] = analyse(tested([{ ...one, restLevel: 0, rate: 2 }]));
        const paths = [...analysis!.readings, ...analysis!.leftOut].map(({ path }) => path);
        expect(paths.sort()).toEqual(
          (one.series ?? []).map((_, at) => `tests[0].series[${at}]`).sort(),
        );
      }),
      { seed: 8, numRuns: 300 },
    );
  });

  it('have a note at each reading left out but that of the start, and none at others without cause', () => {
    fc.assert(
      fc.property(test, (one) => {
        const record = tested([one]);
        const { leftOut } = analyse(record)[0]!;
        const { rows } = seriesNotes(record, resolveWell(record), 0);
        const noted = [...rows.keys()].map((at) => `tests[0].series[${at}]`);
        const isStart = ({ why, minutes }: (typeof leftOut)[number]) =>
          why === 'notAfterStart' && minutes === 0;
        for (const out of leftOut.filter((each) => !isStart(each)))
          expect(noted).toContain(out.path);
        for (const [at, notes] of rows)
          if (!leftOut.some(({ path }) => path === `tests[0].series[${at}]`))
            expect([one.series?.[at]?.rate, notes.length]).toEqual([0, 1]);
      }),
      { seed: 21, numRuns: 300 },
    );
  });
});
