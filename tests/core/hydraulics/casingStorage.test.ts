import { describe, expect, it } from 'vitest';
import { casingStorageMinutes, uAt } from '../../../core/hydraulics/transmissivity.ts';
import { analyse, byMethod } from './inRecord.ts';
import { fileNames, well } from '../../demo-data/wells.ts';

describe('water out of the casing', () => {
  /** 25 rc²/T: Papadopulos and Cooper 1967 (from memory); the figure is reckoned. */
  it('is over after 18 min in a casing of 100 mm and 5 m²/d', () => {
    expect(casingStorageMinutes(0.05, 5)).toBeCloseTo(18, 9);
  });

  it('masks the readings before', () => {
    const granite = fileNames.find((name) => name.startsWith('telescoped'))!;
    const analysis = analyse(well(granite)).find(({ kind }) => kind === 'constantRate')!;
    expect(analysis.casingStorageMin).toBeGreaterThan(12);
    for (const method of ['cooperJacob', 'theis'] as const)
      expect(byMethod(analysis, method)!.used.fromMin).toBeGreaterThan(12);
  });

  it('masks nothing where the casing is not known, and says so', () => {
    const granite = fileNames.find((name) => name.startsWith('telescoped'))!;
    const bare = { ...well(granite) };
    delete bare.strings;
    delete bare.bore;
    const analysis = analyse(bare).find(({ kind }) => kind === 'constantRate')!;
    expect(analysis).not.toHaveProperty('casingStorageMin');
    const codes = byMethod(analysis, 'cooperJacob')!.assumptions.map(({ code }) => code);
    expect(codes).toContain('casingUnknown');
  });
});

describe('u', () => {
  it('is r²S/4Tt', () => {
    expect(uAt(30, 1.67e-4, 385, 1)).toBeCloseTo(0.14, 2);
  });
});
