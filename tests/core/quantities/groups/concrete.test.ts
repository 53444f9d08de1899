import { describe, expect, it } from 'vitest';
import { cased, missingOf, off, reckon, those, valueOf } from '../reckoned.ts';

const bare = { padExtraShare: 0 };

describe('concrete', () => {
  it('of 1 m³ at 1:2:4 takes 6.34 sacks of cement, 0.44 m³ of sand and 0.88 m³ of gravel', () => {
    // Handbooks' worked example (from memory): 1.54 m³ dry in 7 parts of 0.22 m³; cement of
    // 1440 kg/m³ loose: 316.8 kg.
    const headworks = { padLength: 2, padWidth: 2, padThickness: 0.25, drainLength: 0 };
    const reckoned = reckon({ headworks }, bare);
    expect(valueOf(reckoned, 'concreteLitres')).toBeCloseTo(1000, 6);
    expect(off(valueOf(reckoned, 'concreteCementKg'), 316.8)).toBeLessThan(0.001);
    expect(valueOf(reckoned, 'concreteCementSacks')).toBe(7);
    expect(off(valueOf(reckoned, 'concreteSandLitres'), 440)).toBeLessThan(0.001);
    expect(off(valueOf(reckoned, 'concreteGravelLitres'), 880)).toBeLessThan(0.001);
    // 0.55 × 316.8.
    expect(off(valueOf(reckoned, 'concreteWaterLitres'), 174.24)).toBeLessThan(0.001);
  });

  it('of a plan takes the practice’s measures, and shows each', () => {
    const reckoned = reckon({});
    expect(those(reckoned, 'padLitres')[0]!.inputs.map(({ from }) => from)).toEqual([
      { figure: 'padSideM' },
      { figure: 'padSideM' },
      { figure: 'padThicknessM' },
    ]);
    expect(those(reckoned, 'drainLitres')[0]!.inputs.map(({ from }) => from)).toEqual([
      { figure: 'drainLengthM' },
      { figure: 'drainWidthM' },
      { figure: 'padThicknessM' },
    ]);
    // 2 × 2 × 0.1 + 3 × 0.6 × 0.1 m³.
    expect(valueOf(reckoned, 'concreteLitres')).toBeCloseTo(580, 6);
  });

  it('of a built pad is unknown where nobody measured it', () => {
    const identity = { state: 'completed' } as const;
    const reckoned = reckon({ identity });
    expect(those(reckoned, 'concreteLitres')).toEqual([]);
    expect(missingOf(reckoned, 'concrete').map(({ what }) => what)).toEqual(['pad', 'drain']);
  });

  it('goes without a drain that has no length, and says so', () => {
    const identity = { state: 'completed' } as const;
    const reckoned = reckon({ identity, headworks: { padLength: 2, padWidth: 1.5 } });
    expect(valueOf(reckoned, 'concreteLitres')).toBeCloseTo(300, 6);
    expect(missingOf(reckoned, 'concrete')).toEqual([
      { what: 'drain', path: 'headworks.drainLength' },
    ]);
  });

  it('of a dry hole is only what fills it', () => {
    const identity = { state: 'dry' } as const;
    const plug = { from: 0, to: 2, fill: 'concrete', insideHole: true } as const;
    const reckoned = reckon({ ...cased(165, 110, 12, plug), strings: [], identity });
    // π/4 × 0.165² × 2 = 0.042765 m³.
    expect(off(valueOf(reckoned, 'concreteLitres'), 42.765)).toBeLessThan(0.001);
    expect(those(reckoned, 'padLitres')).toEqual([]);
  });
});
