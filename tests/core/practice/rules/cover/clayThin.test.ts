import { describe, expect, it } from 'vitest';
import type { FillKind } from '../../../../../core/record/annulus.ts';
import { fill, filled, met, passedBy, pipe, slotted, stringOf, verdictOf } from './coveredWell.ts';

const pack = fill(18, 28, 'gravelPack');
const clayFrom = (fromM: number, kind: FillKind = 'claySeal') =>
  filled(fill(3, fromM, 'backfill'), fill(fromM, 18, kind), pack);

describe('clay on the pack', () => {
  // 2 m, and 0.5 m least: UNICEF and Practica, manual drilling handbooks, from memory.
  it('is asked for again where it is short of 2 m, and grave where short of 0.5 m', () => {
    expect(verdictOf('clay.thin', clayFrom(17)).findings).toEqual([
      {
        code: 'clay.thin',
        severity: 'warning',
        path: 'annulus[1]',
        fromM: 17,
        toM: 18,
        values: { lengthM: 1, packM: 18, wantedM: 2, graveM: 0.5 },
      },
    ]);
    expect(verdictOf('clay.thin', clayFrom(17.6)).findings).toMatchObject([{ severity: 'error' }]);
  });

  it('is grave where nothing tight lies on the pack', () => {
    const bare = filled(fill(3, 18, 'backfill'), pack);
    expect(verdictOf('clay.thin', bare).findings).toMatchObject([
      { severity: 'error', path: 'annulus[1]', fromM: 18, values: { lengthM: 0 } },
    ]);
  });

  it.each(['claySeal', 'bentonite', 'cementGrout'] as const)('may be %s of 2 m', (kind) => {
    expect(verdictOf('clay.thin', clayFrom(16, kind))).toEqual(met);
  });

  it('meets its limits where a double falls short of them, and in two layers', () => {
    // In a double 17.4 − 15.4 is a little less than 2, and 16.4 − 15.9 a little less than 0.5.
    const tight = filled(
      fill(3, 15.4, 'backfill'),
      fill(15.4, 17.4, 'claySeal'),
      fill(17.4, 28, 'gravelPack'),
    );
    expect(verdictOf('clay.thin', tight)).toEqual(met);
    const half = filled(
      fill(3, 15.9, 'backfill'),
      fill(15.9, 16.4, 'claySeal'),
      fill(16.4, 28, 'gravelPack'),
    );
    expect(verdictOf('clay.thin', half).findings).toMatchObject([
      { severity: 'warning', values: { lengthM: 0.5 } },
    ]);
    const layers = filled(fill(16, 17, 'cementGrout'), fill(17, 18, 'claySeal'), pack);
    expect(verdictOf('clay.thin', layers)).toEqual(met);
  });

  it('is asked of the pack of each screen', () => {
    const strings = [stringOf([pipe, 10], [slotted, 12], [pipe, 20], [slotted, 26], [pipe, 28])];
    const annulus = [
      fill(3, 8, 'backfill'),
      fill(8, 13, 'gravelPack'),
      fill(13, 18, 'claySeal'),
      pack,
    ];
    expect(verdictOf('clay.thin', { strings, annulus }).findings).toMatchObject([
      { path: 'annulus[1]', values: { packM: 8, lengthM: 0 } },
    ]);
  });

  it('follows the practice: 1 m is enough in machine-drilled rock', () => {
    const rock = { bore: { method: 'downTheHoleHammer' as const, depthReached: 28 } };
    expect(verdictOf('clay.thin', { ...clayFrom(17), ...rock })).toEqual(met);
  });

  it('cannot be judged where nobody wrote what stands on it', () => {
    expect(verdictOf('clay.thin', filled(fill(17, 18, 'claySeal'), pack))).toMatchObject({
      findings: [],
      missing: [{ what: 'fills', path: 'annulus', fromM: 0, toM: 17 }],
    });
    expect(verdictOf('clay.thin', filled(fill(0, 3, 'cementGrout')))).toMatchObject({
      findings: [],
      missing: [{ what: 'fills', fromM: 20, toM: 26 }],
    });
  });

  it('is not asked where no pack stands round a screen', () => {
    const natural = filled(fill(0, 3, 'cementGrout'), fill(3, 28, 'naturalCollapse'));
    expect(verdictOf('clay.thin', natural)).toEqual(passedBy);
    expect(verdictOf('clay.thin', { identity: { state: 'dry' } })).toEqual(passedBy);
  });
});
