import { describe, expect, it } from 'vitest';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../core/practice/choosePractice.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import {
  planDisinfection,
  type AskedDisinfection,
} from '../../../../core/water/disinfection/planDisinfection.ts';
import type { ReckonedId } from '../../../../core/water/reckoned.ts';
import { record } from '../../model/well.ts';

type Chapters = Omit<WellRecord, 'schemaVersion'>;

/** 40 m of 110 × 4.2 pipe in a 165 mm hole, water from 10 m down, gravel over the last 15 m. */
const well: Chapters = {
  bore: { depthReached: 40, sections: [{ from: 0, to: 40, diameter: 165 }] },
  strings: [
    {
      set: { by: 'bottom', depth: 40 },
      components: [
        { kind: 'plain', outside: 110, wall: 4.2, length: 25 },
        { kind: 'screen', outside: 110, wall: 4.2, length: 15 },
      ],
    },
  ],
  annulus: [{ from: 25, to: 40, fill: 'gravelPack' }],
  levels: [{ reading: 10, datum: 'ground', state: 'static' }],
  pump: { rate: 1.2, riserDiameter: 42 },
};

function plan(chapters: Chapters, asked?: AskedDisinfection) {
  const all = record(chapters);
  return planDisinfection(all, resolveWell(all), practiceOf(all), asked);
}

function value(from: ReturnType<typeof plan>, id: ReckonedId) {
  return from.reckoned.find((one) => one.id === id)?.value;
}

const near = (worth: number) => expect.closeTo(worth, worth > 100 ? 0 : 1);

describe('a disinfection', () => {
  // Worked values: 0.2432 m³ in 30 m of 110 × 4.2 pipe, 50 mg/l, 65 %: 18.7 g; with 15 m of pack
  // in a 165 mm hole at 35 % voids 0.3056 m³: 23.5 g.
  it('is reckoned from the water in the pipe', () => {
    const found = plan(well, { doseMgL: 50, strengthPercent: 65 });
    expect(value(found, 'pipeWaterLitres')?.most).toBeCloseTo(243.2, 1);
    expect(value(found, 'productG')?.most).toBeCloseTo(18.7, 1);
    expect(found.missing).toEqual([]);
    expect(found.assumptions).not.toContain('strength');
  });

  it('takes in the voids of the pack where they are asked for', () => {
    const found = plan(well, { doseMgL: 50, strengthPercent: 65, packVoids: true });
    expect(value(found, 'waterLitres')?.most).toBeCloseTo(305.6, 1);
    expect(value(found, 'productG')?.most).toBeCloseTo(23.5, 1);
    expect(found.assumptions).toContain('packVoids');
  });

  it('takes in the riser up to the spout where it is asked for', () => {
    const found = plan(well, { riser: true });
    // π/4 · 0.042² · 11 m
    expect(value(found, 'riserWaterLitres')?.most).toBeCloseTo(15.24, 2);
    expect(found.assumptions).toEqual(expect.arrayContaining(['riserAsOutside', 'spout']));
  });

  it('names its waters by a letter and a number, as its formula does', () => {
    const found = plan(well, { packVoids: true });
    const water = found.reckoned.find(({ id }) => id === 'waterLitres');
    expect(water?.inputs.map(({ symbol }) => symbol)).toEqual(['V₁', 'V₂']);
  });

  it('is told in level spoons, between a light and a heavy product', () => {
    const found = plan(well, { doseMgL: 50, strengthPercent: 65 });
    expect(value(found, 'teaspoons')).toEqual({ least: near(3.74), most: near(4.68) });
    expect(value(found, 'tablespoons')).toEqual({ least: near(1.25), most: near(1.56) });
    expect(found.assumptions).toContain('bulkDensity');
  });

  it('is dissolved first: 12.2 g of chlorine in 1.2 l make a stock of 1 %', () => {
    expect(value(plan(well), 'stockLitres')?.most).toBeCloseTo(1.216, 3);
  });

  it('washes the walls with 200 mg/l: 6.2 g of 65 % in a bucket of 20 l (arithmetic)', () => {
    expect(value(plan(well, { strengthPercent: 65 }), 'washProductG')?.most).toBeCloseTo(6.15, 2);
    expect(value(plan(well, { product: 'liquid' }), 'washProductG')).toBeUndefined();
  });

  it('is pumped off at the rate of the pump', () => {
    const found = plan(well);
    expect(value(found, 'pumpOffLitres')?.most).toBeCloseTo(3 * 243.2, 0);
    expect(value(found, 'pumpOffMinutes')?.most).toBeCloseTo((3 * 0.2432 * 60) / 1.2, 1);
    const laidOut = plan({ ...well, layingOut: { rate: 2.4 } });
    expect(value(laidOut, 'pumpOffMinutes')?.most).toBeCloseTo((3 * 0.2432 * 60) / 2.4, 1);
    const unknown = plan({ ...well, pump: {} });
    expect(value(unknown, 'pumpOffMinutes')).toBeUndefined();
    expect(unknown.missing).toEqual([{ what: 'rate', path: 'layingOut.rate' }]);
  });

  it('says what is customary where nobody asked, and takes no dose of nothing', () => {
    for (const asked of [{}, { doseMgL: 0, strengthPercent: 0 }, { strengthPercent: 650 }])
      expect(plan(well, asked)).toMatchObject({ doseMgL: 50, strengthPercent: 70 });
    expect(plan(well).assumptions).toEqual(expect.arrayContaining(['dose', 'strength']));
    expect(plan(well, { product: 'liquid' }).strengthPercent).toBe(3.5);
  });

  it('stands and is sampled by the practice', () => {
    const { contactH, resample, cautions } = plan(well);
    expect(contactH).toMatchObject({ least: { value: 4 }, advised: { least: 12, most: 24 } });
    expect(resample).toMatchObject({ waitDays: { value: 1 }, chlorineMgL: { value: 0.1 } });
    expect(cautions[0]).toBe('localRules');
  });
});

describe('the water of a well', () => {
  it('includes the open hole under the casing, and not what gravel fills there', () => {
    const open = {
      ...well,
      annulus: [],
      bore: { depthReached: 50, sections: [{ from: 0, to: 50, diameter: 165 }] },
    };
    // π/4 · 0.165² · 10 m
    expect(value(plan(open), 'holeWaterLitres')?.most).toBeCloseTo(213.8, 1);
    const filled = {
      ...open,
      annulus: [{ from: 40, to: 50, fill: 'backfill', insideHole: true }],
    };
    expect(value(plan(filled), 'holeWaterLitres')).toBeUndefined();
    expect(value(plan(filled), 'pipeWaterLitres')?.most).toBeCloseTo(243.2, 1);
  });

  it('of a dug well is that of the hole: 3.5 m at 1.40 m across, worked case', () => {
    const dug = {
      bore: { depthReached: 8.5, sections: [{ from: 0, to: 8.5, diameter: 1400 }] },
      levels: [{ reading: 5, datum: 'ground', state: 'static' }],
    };
    const found = plan(dug, { doseMgL: 100, strengthPercent: 70 });
    expect(value(found, 'waterLitres')?.most).toBeCloseTo(5388, 0);
    expect(value(found, 'productG')?.most).toBeCloseTo(770, 0);
  });

  it('is not guessed: no dose without the rest level, the pipe’s inside, the pack or the riser', () => {
    const what = (chapters: Chapters, asked?: AskedDisinfection) => {
      const found = plan(chapters, asked);
      expect(value(found, 'productG')).toBeUndefined();
      return found.missing.map((one) => one.what);
    };
    expect(what({ ...well, levels: [] })).toEqual(['restLevel']);
    expect(what({ levels: well.levels! })).toEqual(['hole']);
    expect(what({ ...well, pump: {} }, { riser: true })).toEqual(['riser']);
    const unsized = {
      ...well,
      strings: [{ set: { by: 'bottom', depth: 40 }, components: [{ kind: 'plain', length: 40 }] }],
    };
    expect(what(unsized)).toEqual(['pipeInside']);
    const unbored = { ...well, bore: { depthReached: 40 } };
    expect(what(unbored, { packVoids: true })).toContain('packSizes');
  });
});
