import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pumpKinds } from '../../../../core/water/pump/kinds.ts';
import type { PumpInputs } from '../../../../core/water/pump/ranking.ts';
import { allGiven, ranked, wellWithDryLevel } from './wells.ts';

const wild = fc.oneof(
  fc.constantFrom(0, -1, 0.004, 1e4, 1e9, Infinity, NaN),
  fc.double({ min: -5, max: 60 }),
);

/** Mostly what it should be. */
const figure = (sane: number) => fc.oneof({ weight: 5, arbitrary: fc.constant(sane) }, wild);

const inputs: fc.Arbitrary<PumpInputs> = fc.record(
  {
    safeRateM3h: figure(1),
    drawdownM: figure(2),
    seasonalSwingM: figure(2),
    lowMonths: fc.array(fc.integer({ min: -1, max: 14 }), { maxLength: 12 }),
    users: figure(250),
    litresPerPersonDay: figure(20),
    hoursMost: figure(8),
    casingInsideMm: figure(102),
    ph: figure(7),
    repair: fc.constantFrom('caretaker', 'areaMechanic', 'workshop'),
    mains: fc.boolean(),
    sunHours: figure(5),
    outletM: figure(0.6),
    deliveryInsideMm: figure(34),
    deliveryM: figure(20),
  },
  { requiredKeys: [] },
);

test('whatever is given, every kind is judged once, with figures that are amounts', () => {
  fc.assert(
    fc.property(inputs, figure(12).filter(Number.isFinite), (given, dry) => {
      const { kinds, quantities } = ranked(wellWithDryLevel(dry), given);
      expect(kinds.map(({ kind }) => kind).sort()).toEqual(pumpKinds.map(({ id }) => id).sort());
      for (const { value } of [...quantities, ...kinds.flatMap((one) => one.quantities)]) {
        expect(Number.isNaN(value)).toBe(false);
        expect(value).toBeGreaterThanOrEqual(0);
      }
      for (const { verdict, missing, intake } of kinds) {
        if (verdict !== 'ruledOut') expect(verdict === 'cantSay').toBe(missing.length > 0);
        for (const { fromM, toM } of intake?.windows ?? []) expect(fromM).toBeLessThanOrEqual(toM);
      }
    }),
    { seed: 20261125, numRuns: 400 },
  );
});

test('a ruled-out kind stays so where the water stands deeper', () => {
  const depths = Array.from({ length: 70 }, (_, at) => at / 2);
  for (const { id } of pumpKinds) {
    const out = depths.map(
      (depthM) =>
        ranked(wellWithDryLevel(depthM)).kinds.find(({ kind }) => kind === id)!.verdict ===
        'ruledOut',
    );
    expect(out, id).toEqual([...out].sort());
  }
});

test('what is learned of a kind that cannot be judged never makes it worse than ruled out', () => {
  fc.assert(
    fc.property(inputs, (given) => {
      const before = ranked(wellWithDryLevel(12), given).kinds;
      const after = ranked(wellWithDryLevel(12), { ...allGiven, ...given }).kinds;
      for (const { kind, verdict } of before)
        if (verdict === 'ruledOut')
          expect(after.find((one) => one.kind === kind)!.verdict).toBe('ruledOut');
    }),
    { seed: 7, numRuns: 100 },
  );
});
