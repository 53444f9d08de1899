import { expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../core/practice/choosePractice.ts';
import { safeRateInputs } from '../../../../core/practice/reading/safeRateInputs.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { record } from '../../model/well.ts';

const inputsOf = (parts: Partial<WellRecord>) => {
  const one = record(parts);
  return safeRateInputs(one, resolveWell(one), practiceOf(one));
};
const levels = [{ reading: 8, datum: 'ground', state: 'static' } as const];

it('a dry season that was said goes before one that the swing of the year tells', () => {
  const said = inputsOf({ levels, layingOut: { drySeasonLevel: 12, seasonalSwing: 3 } });
  expect(said.drySeasonLevelM).toBe(12);
  expect(said.drySeasonEstimated).toBeUndefined();
  expect(inputsOf({ levels, layingOut: { seasonalSwing: 3 } })).toMatchObject({
    drySeasonLevelM: 11,
    drySeasonEstimated: true,
  });
  expect(inputsOf({ levels }).drySeasonEstimated).toBeUndefined();
});
