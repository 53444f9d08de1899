import fc from 'fast-check';
import { known } from '../../core/base/known.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { levelDatums, type PumpingTest } from '../../core/record/water.ts';
import { randomWell } from '../laws/randomWell.ts';

const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

const amount = fc.oneof(
  fc.constantFrom(0, 1, 1e-9, 1e12),
  fc.double({ min: 0, max: 2000, noNaN: true }),
);
const metres = fc.oneof(
  fc.constantFrom(0, 10, -5),
  fc.double({ min: -100, max: 500, noNaN: true }),
);

const reading = fc
  .record({ minutes: amount, reading: metres, rate: maybe(amount), step: maybe(fc.nat(4)) })
  .map(({ minutes, reading: readM, ...others }) => ({ minutes, reading: readM, ...known(others) }));

/** A drawdown that falls as in wide and even ground, with scatter; minutes from 1. */
const likely = fc
  .record({
    slope: fc.double({ min: 0.001, max: 30, noNaN: true }),
    rest: fc.double({ min: 0, max: 60, noNaN: true }),
    rate: fc.double({ min: 0.05, max: 80, noNaN: true }),
    count: fc.integer({ min: 2, max: 40 }),
  })
  .map(({ slope, rest, rate, count }) => ({
    restLevel: rest,
    rate,
    series: Array.from({ length: count }, (_, at) => {
      const minutes = Math.round(1.25 ** at * 10) / 10;
      return { minutes, reading: rest + slope * (1 + Math.log10(minutes) + 0.01 * (at % 3)) };
    }),
  }));

const kind = fc.constantFrom('step' as const, 'constantRate' as const, 'recovery' as const);

const test: fc.Arbitrary<PumpingTest> = fc.oneof(
  fc.tuple(kind, likely, maybe(amount)).map(([what, made, minutesPumped]) => ({
    kind: what,
    ...made,
    ...known({ minutesPumped }),
  })),
  fc
    .record({
      kind,
      startedAt: maybe(fc.constantFrom('2026-01-10', '2026-01-10T07:00Z', 'soon')),
      datum: maybe(fc.constantFrom(...levelDatums)),
      restLevel: maybe(metres),
      rate: maybe(amount),
      minutesPumped: maybe(amount),
      pumpIntake: maybe(metres),
      series: maybe(fc.array(reading, { maxLength: 25 })),
    })
    .map(({ kind: what, ...others }) => ({ kind: what, ...known(others) })),
);

const written = fc.oneof(
  fc.constantFrom('Nitrate', 'E. coli', 'Arsenic', 'turbidity', 'pH', 'calcium', 'Magnesium'),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.constant('a word that is far too long for its column '.repeat(12)),
);

const result = fc
  .record({
    parameter: written,
    value: maybe(fc.oneof(amount, fc.constantFrom(-3, 1e-12))),
    unit: maybe(fc.constantFrom('mg/l', 'µg/l', 'CFU/100 ml', 'per 100 ml', 'NTU', 'furlongs')),
    as: maybe(fc.constantFrom('N', 'NO3', 'CaCO3', 'x')),
    below: maybe(fc.boolean()),
  })
  .map(({ parameter, ...others }) => ({ parameter, ...known(others) }));

const moment = fc.constantFrom('2026-01-10', '2026-01-11T07:00Z', 'soon');

const sample = fc
  .record({
    takenAt: maybe(moment),
    takenBy: maybe(written),
    place: maybe(written),
    laboratory: maybe(written),
    receivedAt: maybe(moment),
    remark: maybe(written),
    results: maybe(fc.array(result, { maxLength: 30 })),
  })
  .map((one) => known(one));

const dose = fc
  .record({
    at: maybe(moment),
    product: maybe(written),
    dose: maybe(amount),
    remark: maybe(written),
  })
  .map((one) => known(one));

/** Wells with pumping tests, samples and disinfections of all kinds, likely and not. */
export const wateryWell: fc.Arbitrary<WellRecord> = fc
  .record({
    well: randomWell,
    tests: fc.array(test, { maxLength: 4 }),
    quality: fc.array(sample, { maxLength: 5 }),
    disinfection: fc.array(dose, { maxLength: 4 }),
  })
  .map(({ well, ...water }) => ({ ...well, ...water }));
