import { describe, expect, it } from 'vitest';
import { seededRandom, type Random } from '../../../core/base/random.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { deepFreeze } from '../../../core/record/freeze.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { planDisinfection } from '../../../core/water/disinfection/planDisinfection.ts';
import { guidelinesOf } from '../../../core/water/guidelines/chooseGuidelines.ts';
import { judgeQuality } from '../../../core/water/quality/judgeQuality.ts';
import type { Reckoned } from '../../../core/water/reckoned.ts';
import { sitingPlan } from '../../../core/water/siting/sitingPlan.ts';
import { travelTimes } from '../../../core/water/siting/travelTimes.ts';
import { openForms } from '../../../core/water/units/convert.ts';
import { shuffledRecord } from './shuffledRecord.ts';

const seeds = Array.from({ length: 120 }, (_, seed) => seed + 1);
const set = guidelinesOf(undefined);

function randomWell(seed: number): WellRecord {
  const random: Random = seededRandom(seed);
  return deepFreeze(shuffledRecord(random, set.parameters));
}

/** Every figure with a unit that hangs anywhere in a result. */
function reckonedIn(value: unknown): Reckoned[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = 'formula' in value ? [value as Reckoned] : [];
  return [...own, ...Object.values(value).flatMap(reckonedIn)];
}

describe.each(seeds)('any well (%d)', (seed) => {
  const well = randomWell(seed);
  const model = resolveWell(well);
  const quality = judgeQuality(well, set);
  const times = travelTimes(well, model);
  const plan = planDisinfection(well, model, practiceOf(well), { packVoids: seed % 2 === 0 });

  it('has figures that are numbers from 0 up, the least before the most', () => {
    for (const { id, value, formula, source } of reckonedIn([quality, times, plan])) {
      expect(Number.isFinite(value.least), id).toBe(true);
      expect(value.most, id).toBeGreaterThanOrEqual(value.least);
      if (id !== 'ionErrorPercent') expect(value.least, id).toBeGreaterThanOrEqual(0);
      expect(formula).toMatch(/=/);
      expect(source.title.en).toMatch(/\S/);
    }
  });

  it('has a state for each value of each parameter, and a reading behind each but those not tested', () => {
    for (const one of quality.parameters) {
      const held = set.parameters.find(({ id }) => id === one.parameter)!;
      expect(one.comparisons).toHaveLength(held.values.length);
      for (const { state } of one.comparisons)
        expect(state === 'notTested').toBe(one.last === undefined);
      if (openForms(one.parameter).length === 0)
        for (const { state } of one.comparisons) expect(state).not.toBe('formUnknown');
    }
  });

  it('takes each result as one parameter or as unknown', () => {
    const told = (well.quality ?? []).flatMap(({ results = [] }) =>
      results.filter(({ value }) => value !== undefined),
    ).length;
    const read = quality.parameters.flatMap(({ readings }) => readings).length;
    expect(read + quality.unknown.length).toBeGreaterThanOrEqual(told);
  });

  it('has every surrounding once on the plan', () => {
    const { placed, withoutDirection, withoutDistance } = sitingPlan(well.site);
    const paths = [...placed, ...withoutDirection, ...withoutDistance].map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths).toHaveLength(well.site?.surroundings?.length ?? 0);
    for (const { eastM, northM, distanceM } of placed)
      expect(Math.hypot(eastM, northM)).toBeCloseTo(distanceM, 6);
  });

  it('has no dose unless all the water is known', () => {
    const dosed = plan.reckoned.some(({ id }) => id === 'productG');
    expect(dosed).toBe(plan.missing.every(({ what }) => what === 'rate'));
  });
});
