import { describe, expect, it } from 'vitest';
import { fill, filled, met, passedBy, verdictOf } from './coveredWell.ts';

const pack = fill(18, 28, 'gravelPack');
const sealed = (fromM: number, toM: number) =>
  filled(fill(0, fromM, 'backfill'), fill(fromM, toM, 'claySeal'), fill(toM, 18, 'backfill'), pack);

describe('the reach of the sanitary seal', () => {
  // To 3 m: published designs of hand-drilled wells. From 0.5 m: common practice.
  it('is short where it ends above 3 m or begins below 0.5 m', () => {
    expect(verdictOf('seal.short', sealed(0.2, 2.99)).findings).toEqual([
      {
        code: 'seal.short',
        severity: 'warning',
        path: 'annulus[1]',
        fromM: 0.2,
        toM: 2.99,
        values: { startM: 0.5, wantedM: 3 },
      },
    ]);
    expect(verdictOf('seal.short', sealed(0.51, 4)).findings).toHaveLength(1);
  });

  it('is enough from 0.5 m to 3 m, also in layers', () => {
    expect(verdictOf('seal.short', sealed(0.5, 3))).toEqual(met);
    const layers = filled(fill(0, 0.2, 'concrete'), fill(0.2, 3, 'bentonite'), pack);
    expect(verdictOf('seal.short', layers)).toEqual(met);
  });

  it('reaches deeper in machine-drilled rock: to 6 m', () => {
    const bore = { method: 'airRotary' as const, depthReached: 28 };
    expect(verdictOf('seal.short', { ...sealed(0, 5.9), bore }).findings).toMatchObject([
      { values: { wantedM: 6 } },
    ]);
    expect(verdictOf('seal.short', { ...sealed(0, 6), bore })).toEqual(met);
  });

  it('is broken by what is not tight within it', () => {
    const parted = filled(
      fill(0, 1, 'cementGrout'),
      fill(1, 1.5, 'naturalCollapse'),
      fill(1.5, 4, 'cementGrout'),
      pack,
    );
    expect(verdictOf('seal.short', parted).findings).toMatchObject([{ fromM: 0, toM: 1 }]);
  });

  it('cannot be judged where nobody wrote what stands beside it', () => {
    expect(verdictOf('seal.short', filled(fill(0, 2, 'claySeal'), pack))).toMatchObject({
      findings: [],
      missing: [{ what: 'fills', path: 'annulus', fromM: 2, toM: 18 }],
    });
    expect(verdictOf('seal.short', filled(fill(1, 4, 'claySeal'), pack))).toMatchObject({
      findings: [],
      missing: [{ what: 'fills', fromM: 0, toM: 1 }],
    });
  });

  it('is what the record says where it calls a fill the seal', () => {
    const said = filled(fill(0, 2, 'claySeal', { sanitary: true }), pack);
    expect(verdictOf('seal.short', said).findings).toHaveLength(1);
  });

  it('is not asked where there is none, which seal.none says, nor of a hole given up', () => {
    expect(verdictOf('seal.short', filled(fill(0, 18, 'backfill'), pack))).toEqual(passedBy);
    expect(verdictOf('seal.short', { ...sealed(1, 2), identity: { state: 'dry' } })).toEqual(
      passedBy,
    );
  });
});
