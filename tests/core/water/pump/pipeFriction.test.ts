import { describe, expect, it } from 'vitest';
import {
  frictionFactor,
  hydraulicWatts,
  pipeFrictionM,
} from '../../../../core/water/pump/pipeFriction.ts';

/** Colebrook and White, solved by iteration: independent of the explicit formula. */
function colebrook(reynolds: number, relativeRoughness: number): number {
  let root = 8;
  for (let step = 0; step < 60; step += 1)
    root = -2 * Math.log10(relativeRoughness / 3.7 + (2.51 / reynolds) * root);
  return 1 / (root * root);
}

/** Hazen and Williams, metres per metre: h = 10.67 · Q^1.852 / (C^1.852 · d^4.87), SI. */
function hazenWilliams(flowM3s: number, insideM: number, c: number): number {
  return (10.67 * flowM3s ** 1.852) / (c ** 1.852 * insideM ** 4.87);
}

describe('friction in a pipe', () => {
  it('is 64/Re in laminar flow', () => {
    expect(frictionFactor(1000, 0.001)).toBe(0.064);
  });

  it('stays within 3 % of Colebrook where Swamee and Jain say it does', () => {
    for (const reynolds of [5e3, 1e4, 5e4, 1e5, 1e6, 1e7])
      for (const roughness of [1e-6, 1e-4, 1e-3, 1e-2]) {
        const ratio = frictionFactor(reynolds, roughness) / colebrook(reynolds, roughness);
        expect(Math.abs(ratio - 1)).toBeLessThan(0.03);
      }
  });

  it('gives the head of a textbook’s example (White, Fluid Mechanics, ch. 6, from memory)', () => {
    // Oil, 1e-5 m²/s, 0.2 m³/s through 500 m of 200 mm, 0.26 mm rough: about 117 m by the chart.
    const headM = pipeFrictionM({
      flowM3h: 720,
      lengthM: 500,
      insideMm: 200,
      roughnessMm: 0.26,
      viscosityM2s: 1e-5,
    });
    expect(headM).toBeGreaterThan(117 * 0.97);
    expect(headM).toBeLessThan(117 * 1.03);
  });

  it('lies between what Hazen and Williams give for plastic, C 140 to 150 (from memory)', () => {
    const headM = pipeFrictionM({
      flowM3h: 3,
      lengthM: 100,
      insideMm: 34,
      roughnessMm: 0.01,
      viscosityM2s: 1.004e-6,
    });
    expect(headM).toBeGreaterThan(100 * hazenWilliams(3 / 3600, 0.034, 150));
    expect(headM).toBeLessThan(100 * hazenWilliams(3 / 3600, 0.034, 140));
  });

  it('is nothing without flow, and nothing is said of a pipe without an inside', () => {
    const run = { lengthM: 10, roughnessMm: 0.01, viscosityM2s: 1e-6 };
    expect(pipeFrictionM({ ...run, flowM3h: 0, insideMm: 34 })).toBe(0);
    expect(pipeFrictionM({ ...run, flowM3h: 1, insideMm: 0 })).toBe(0);
  });
});

describe('power to lift water', () => {
  it('is that of a worked example (Masters, ch. 9): 4.1 US gpm against 170 ft', () => {
    // 0.1885 · 170 · 4.1 = 131.4 W to the water, as printed; 0.227125 m³/h a gpm, 0.3048 m a ft.
    expect(hydraulicWatts(4.1 * 0.2271247, 170 * 0.3048)).toBeCloseTo(131.4, 0);
  });

  it('is 27.25 W for 1 m³/h against 10 m: computed', () => {
    expect(hydraulicWatts(1, 10)).toBeCloseTo(27.25, 2);
  });
});
