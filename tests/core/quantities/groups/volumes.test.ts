import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { fileNames, well } from '../../../demo-data/wells.ts';
import { evaluate } from '../evaluate.ts';
import { cased, missingOf, off, reckon, those, valueOf } from '../reckoned.ts';

describe('volumes', () => {
  it.each(fileNames)('of %s are those of the model, ring by ring', (name) => {
    const record = well(name);
    const { contents, totals } = resolveWell(record);
    const reckoned = reckon(record);
    const casings = those(reckoned, 'casingLitres');
    expect(casings.map(({ value }) => value)).toEqual(contents.map(({ litres }) => litres));
    for (const casing of casings) expect(off(evaluate(casing), casing.value)).toBeLessThan(1e-6);
    expect(valueOf(reckoned, 'boreLitres')).toBe(totals.boreLitres);
    expect(valueOf(reckoned, 'annulusLitres') ?? 0).toBeCloseTo(totals.annulusLitres ?? 0, 6);
  });

  it('of a casing of 110 × 4.2 mm are 8.107 litres a metre', () => {
    // π/4 × 0.1016² × 1000, computed apart.
    const reckoned = reckon(cased(165, 110, 12));
    expect(off(valueOf(reckoned, 'casingLitres')! / 12, 8.107)).toBeLessThan(0.001);
  });

  it('of water in the casing stand under the rest level', () => {
    const levels = [{ reading: 4, datum: 'ground', state: 'static' } as const];
    const [water] = those(reckon({ ...cased(165, 110, 12), levels }), 'casingWaterLitres');
    expect(off(water!.value, 8 * 8.107)).toBeLessThan(0.001);
    expect(water!.zone).toMatchObject({ fromM: 4, toM: 12 });
  });

  it('of a casing without wall are missed', () => {
    const component = { kind: 'plain', outside: 110, length: 12 } as const;
    const strings = [{ set: { by: 'bottom' as const, depth: 12 }, components: [component] }];
    expect(missingOf(reckon({ ...cased(165, 110, 12), strings }), 'volumes')).toEqual([
      { what: 'pipeWall', path: 'strings[0]', fromM: 0, toM: 12 },
    ]);
  });

  it('tell what fills a casing from what surrounds it', () => {
    const plug = { from: 0, to: 2, fill: 'cementGrout', insideHole: true } as const;
    const reckoned = reckon(cased(165, 110, 12, plug));
    const zones = those(reckoned, 'insideZoneLitres');
    expect(zones.length + those(reckoned, 'annulusZoneLitres').length).toBeGreaterThan(0);
    expect(valueOf(reckoned, 'groutZoneLitres')).toBeGreaterThan(0);
  });
});
