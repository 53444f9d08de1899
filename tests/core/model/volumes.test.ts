import { describe, expect, it } from 'vitest';
import { cylinderLitres } from '../../../core/base/units.ts';
import { pouredLitres, pouredSacks, slurryLitres } from '../../../core/model/volumes.ts';
import type { AnnulusFill } from '../../../core/record/annulus.ts';
import { resolve } from './well.ts';

const pack = (extra: Partial<AnnulusFill>): AnnulusFill => ({
  from: 0,
  to: 1,
  fill: 'gravelPack',
  ...extra,
});

describe('the annulus of a cased hole', () => {
  // V = π/4 (D² − d²) L, computed apart in double precision from these inputs. Tolerance 0.1 %.
  const table = [
    [150, 110, 10, 81.68],
    [165, 110, 12, 142.55],
    [200, 110, 10, 219.13],
    [200, 125, 15, 287.16],
    [250, 160, 20, 579.62],
  ] as const;

  it.each(table)(
    'of %i mm around %i mm over %i m holds %f litres',
    (hole, pipe, metres, litres) => {
      const model = resolve({
        bore: { sections: [{ from: 0, to: metres, diameter: hole }] },
        strings: [
          {
            components: [{ kind: 'plain', outside: pipe, length: metres }],
            set: { by: 'bottom', depth: metres },
          },
        ],
        annulus: [{ from: 0, to: metres, fill: 'gravelPack' }],
      });
      const [zone] = model.annulus;
      expect(Math.abs((zone?.litres ?? 0) / litres - 1)).toBeLessThan(0.001);
    },
  );
});

describe('what a pipe of 110 × 4.2 mm holds', () => {
  it('is 8.107 litres a metre', () => {
    // π/4 × 0.1016² × 1000 = 8.107 L/m.
    expect(cylinderLitres(110 - 2 * 4.2, 1)).toBeCloseTo(8.107, 3);
  });
});

describe('cement slurry', () => {
  // Grain density 3.15 (cement handbooks, from memory): V = m / 3.15 + water. Tolerance 0.5 %.
  const sack50 = [
    [0.4, 35.87],
    [0.42, 36.87],
    [0.45, 38.37],
    [0.5, 40.87],
    [0.55, 43.37],
    [0.6, 45.87],
  ] as const;

  it.each(sack50)(
    'at a water to cement ratio of %f is %f litres a sack of 50 kg',
    (ratio, litres) => {
      expect(Math.abs(slurryLitres(50, ratio) / litres - 1)).toBeLessThan(0.005);
    },
  );

  // US sacks of 94 lb = 42.638 kg with 5.2 and 6 gallons of water: 1.173 and 1.280 cubic feet.
  const sack94 = [
    [19.68, 33.22],
    [22.71, 36.25],
  ] as const;

  it.each(sack94)('of a 94 lb sack with %f litres of water is %f litres', (water, litres) => {
    expect(Math.abs(slurryLitres(42.638, water / 42.638) / litres - 1)).toBeLessThan(0.005);
  });
});

describe('litres poured', () => {
  it('are those written, before any sacks', () => {
    expect(pouredLitres(pack({ litres: 90, sacks: 3, sackMass: 50 }))).toBe(90);
  });

  it('come from sacks of gravel at 1.6 kg a litre, loose', () => {
    // The table's 150/110 mm hole: 2.61 bags of 50 kg fill 81.68 litres.
    const litres = pouredLitres(pack({ sacks: 2.61, sackMass: 50 })) ?? 0;
    expect(Math.abs(litres / 81.68 - 1)).toBeLessThan(0.005);
  });

  it('come from sacks of clay at 1.1 kg a litre, dry and without swelling', () => {
    // 2 × 25 kg / 1.1 = 45.45 L; the middle of 1.0 to 1.2 (trade data, from memory).
    const clay = pack({ fill: 'claySeal', sacks: 2, sackMass: 25 });
    expect(pouredLitres(clay)).toBeCloseTo(45.4545, 4);
    expect(pouredLitres({ ...clay, fill: 'bentonite' })).toBeCloseTo(45.4545, 4);
  });

  it('come from sacks of cement by the water that they were mixed with', () => {
    const grout = pack({ fill: 'cementGrout', sacks: 3, sackMass: 50 });
    expect(pouredLitres({ ...grout, waterCement: 0.5 })).toBeCloseTo(3 * 40.873, 2);
    expect(pouredLitres(grout)).toBeUndefined();
  });

  it('sums up the pouring’s steps where neither litres nor sacks are written', () => {
    const poured = pack({ sackMass: 40, pours: [{ sacks: 2 }, { litres: 10, sacks: 1 }] });
    // 40 kg at 1.6 kg a litre are 25 L (handbooks, from memory).
    expect(pouredLitres(poured)).toBe(60);
    expect(pouredSacks(poured)).toBe(3);
    expect(pouredLitres({ ...poured, litres: 90 })).toBe(90);
    expect(pouredSacks({ ...poured, litres: 90 })).toBeUndefined();
    expect(pouredLitres({ ...poured, sacks: 1 })).toBe(25);
    expect(pouredLitres(pack({ sackMass: 40, pours: [{ sacks: 2 }, {}] }))).toBeUndefined();
  });

  it('are absent without a sack’s mass, and for kinds of no known density', () => {
    expect(pouredLitres(pack({ sacks: 4 }))).toBeUndefined();
    expect(pouredLitres(pack({ sackMass: 50 }))).toBeUndefined();
    expect(pouredLitres(pack({ fill: 'backfill', sacks: 4, sackMass: 50 }))).toBeUndefined();
  });
});
