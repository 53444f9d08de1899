import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import {
  bandIds,
  bases,
  conditions,
  purposes,
} from '../../../../core/water/guidelines/guidelineSet.ts';
import { guidelinesOf } from '../../../../core/water/guidelines/chooseGuidelines.ts';
import { shippedGuidelines } from '../../../../core/water/guidelines/shippedGuidelines.ts';
import { parameterOf } from '../../../../core/water/quality/parameterOf.ts';
import { conversion } from '../../../../core/water/units/convert.ts';
import { readUnit } from '../../../../core/water/units/readUnit.ts';

const { parameters } = guidelinesOf('who2022');
const byId = (id: string) => parameters.find((one) => one.id === id)!;

describe('the shipped values', () => {
  /**
   * WHO, Guidelines for drinking-water quality, 4th ed. with both addenda, 2022. Those marked read
   * were read in public copies or summaries, the others are from memory; so the file says too.
   */
  it.each([
    ['eColi', 'health', 0, 'health', 'read'],
    ['arsenic', 'health', 0.01, 'provisional', 'read'],
    ['fluoride', 'health', 1.5, 'health', 'read'],
    ['nitrate', 'health', 50, 'health', 'read'],
    ['nitrite', 'health', 3, 'health', 'read'],
    ['manganese', 'health', 0.08, 'provisional', 'read'],
    ['lead', 'health', 0.01, 'provisional', 'read'],
    ['uranium', 'health', 0.03, 'provisional', 'fromMemory'],
    ['freeChlorine', 'health', 5, 'health', 'fromMemory'],
    ['iron', 'stains', 0.3, 'acceptability', 'read'],
    ['chloride', 'taste', 250, 'acceptability', 'read'],
    ['sulfate', 'taste', 250, 'acceptability', 'read'],
    ['sodium', 'taste', 200, 'acceptability', 'fromMemory'],
    ['ammonia', 'odour', 1.5, 'acceptability', 'fromMemory'],
    ['turbidity', 'seen', 5, 'acceptability', 'read'],
    ['turbidity', 'chlorination', 1, 'operational', 'read'],
    ['dissolvedSolids', 'taste', 1000, 'acceptability', 'read'],
  ])('%s.%s is %d', (id, key, value, basis, mark) => {
    const held = byId(id).values.find((one) => one.key === key);
    expect(held).toMatchObject({ value, basis, source: { mark }, setBy: 'who2022' });
  });

  it('ranks bacteria as WHO and UNICEF do in household surveys (from memory), and tastes of solids as WHO', () => {
    expect(byId('eColi').bands!.list.map(({ from }) => from)).toEqual([0, 1, 11, 101]);
    expect(byId('dissolvedSolids').bands!.list.map(({ from }) => from)).toEqual([
      0, 300, 600, 900, 1200,
    ]);
  });
});

describe('the shipped set', () => {
  it('has names in every language, units that are read, and values that convert', () => {
    for (const parameter of parameters) {
      for (const language of languages) expect(parameter.names[language]).toMatch(/\S/);
      expect(readUnit(parameter.unit), parameter.id).toBeDefined();
      for (const value of parameter.values)
        expect(conversion(parameter.id, value, parameter), parameter.id).toMatchObject({
          ok: true,
          factor: 1,
        });
    }
  });

  it('uses only bases, purposes, conditions and bands that have a word', () => {
    for (const { values, bands } of parameters) {
      for (const { basis, purpose, when } of values) {
        expect(bases).toContain(basis);
        if (purpose) expect(purposes).toContain(purpose);
        if (when) expect(conditions).toContain(when);
      }
      for (const { id } of bands?.list ?? []) expect(bandIds).toContain(id);
      const from = bands?.list.map((band) => band.from) ?? [];
      expect(from).toEqual(from.toSorted((a, b) => a - b));
    }
  });

  it('knows each alias as one parameter', () => {
    for (const { id, names, aliases } of parameters)
      for (const alias of [...Object.values(names), ...aliases])
        expect(parameterOf(alias, parameters)?.id, alias).toBe(id);
  });

  it('asks only for parameters that it has, and uses every source that it names', () => {
    for (const { beforeHandover } of parameters)
      for (const id of beforeHandover?.instead ?? []) expect(byId(id)).toBeDefined();
    for (const { sources, parameters: written } of shippedGuidelines) {
      const used = JSON.stringify(written);
      for (const key of Object.keys(sources)) expect(used).toContain(`"source":"${key}"`);
    }
  });
});
