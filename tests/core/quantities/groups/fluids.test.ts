import { describe, expect, it } from 'vitest';
import { cased, missingOf, off, reckon, those, valueOf } from '../reckoned.ts';

const hole = cased(200, 125, 46, { from: 0, to: 46, fill: 'backfill' });
const unsaid = {
  ...hole,
  bore: { depthReached: 46, sections: [{ from: 0, to: 46, diameter: 200 }] },
};

function drilledBy(method: 'mudRotary' | 'airRotary' | 'sludging' | 'handAuger') {
  return { ...unsaid, bore: { ...unsaid.bore, method } };
}

describe('drilling fluid', () => {
  it('fills the hole with half as much again', () => {
    // π/4 × 0.2² × 46 = 1.44513 m³; × 1.5 = 2167.7 L; 2 kg of additive a cubic metre: 4.335 kg.
    const reckoned = reckon(drilledBy('mudRotary'));
    expect(off(valueOf(reckoned, 'mudLitres'), 2167.7)).toBeLessThan(0.001);
    expect(off(valueOf(reckoned, 'mudAdditiveKg'), 4.335)).toBeLessThan(0.001);
  });

  it('is for no hole that is drilled dry or by air', () => {
    for (const method of ['airRotary', 'handAuger'] as const) {
      const reckoned = reckon(drilledBy(method));
      expect(those(reckoned, 'mudLitres')).toEqual([]);
      expect(those(reckoned, 'flushLitres')).toEqual([]);
      expect(missingOf(reckoned, 'mud')).toEqual([]);
    }
  });

  it('is unknown where nobody wrote how the hole was drilled, or how deep', () => {
    expect(missingOf(reckon(unsaid), 'mud')).toEqual([{ what: 'method', path: 'bore.method' }]);
    expect(missingOf(reckon({ bore: { method: 'jetting' } }), 'mud')).toEqual([
      { what: 'boreDepth', path: 'bore.depthReached' },
    ]);
  });

  it('has no additive where the practice uses none', () => {
    const reckoned = reckon(drilledBy('sludging'), { mudAdditiveKgM3: 0 });
    expect(those(reckoned, 'mudAdditiveKg')).toEqual([]);
  });
});

describe('water', () => {
  it('is that of mud, flushing, grout and concrete together', () => {
    const grout = { from: 0, to: 3, fill: 'cementGrout' } as const;
    const reckoned = reckon({ ...drilledBy('mudRotary'), annulus: [grout] });
    // Flushing: 3 × 1445.13 L.
    expect(off(valueOf(reckoned, 'flushLitres'), 4335.4)).toBeLessThan(0.001);
    const parts = ['mudLitres', 'flushLitres', 'groutWaterLitres', 'concreteWaterLitres'] as const;
    const sum = parts.reduce((before, id) => before + valueOf(reckoned, id)!, 0);
    expect(valueOf(reckoned, 'waterLitres')).toBeCloseTo(sum, 6);
    expect(valueOf(reckoned, 'waterTrips')).toBe(Math.ceil(sum / 1000));
  });

  it('has no whole where the mud is not known', () => {
    const reckoned = reckon(unsaid);
    expect(those(reckoned, 'waterLitres')).toEqual([]);
    expect(missingOf(reckoned, 'water')).toEqual([{ what: 'method', path: 'bore.method' }]);
  });
});

describe('the load', () => {
  it('weighs whole sacks', () => {
    const pack = { from: 0, to: 46, fill: 'gravelPack' } as const;
    const reckoned = reckon({ ...drilledBy('airRotary'), annulus: [pack] });
    const cement = valueOf(reckoned, 'concreteCementSacks')! * 50;
    const gravel = valueOf(reckoned, 'gravelSacks')! * 50;
    const mix =
      1.6 * (valueOf(reckoned, 'concreteSandLitres')! + valueOf(reckoned, 'concreteGravelLitres')!);
    const sum = cement + gravel + mix + valueOf(reckoned, 'pipesKg')!;
    expect(valueOf(reckoned, 'loadKg')).toBeCloseTo(sum, 6);
    expect(valueOf(reckoned, 'loadTrips')).toBe(Math.ceil(sum / 1000));
  });

  it('and the water go without a drain that nobody measured, and say so', () => {
    const built = {
      ...drilledBy('airRotary'),
      identity: { state: 'completed' },
      headworks: { padLength: 2, padWidth: 2 },
    } as const;
    const reckoned = reckon(built);
    expect(valueOf(reckoned, 'loadKg')).toBeGreaterThan(0);
    expect(valueOf(reckoned, 'waterLitres')).toBeGreaterThan(0);
    for (const group of ['load', 'water'] as const)
      expect(missingOf(reckoned, group)).toEqual([
        { what: 'drain', path: 'headworks.drainLength' },
      ]);
  });

  it('has no whole while a mass is missing', () => {
    const reckoned = reckon({ ...drilledBy('mudRotary'), annulus: [] });
    expect(those(reckoned, 'loadKg')).toEqual([]);
    expect(missingOf(reckoned, 'load')).toEqual([{ what: 'fills', path: 'annulus' }]);
  });
});
