import { describe, expect, it } from 'vitest';
import type { FillKind } from '../../../../../core/record/annulus.ts';
import { fill, filled, met, passedBy, pipe, slotted, stringOf, verdictOf } from './coveredWell.ts';

const pack = fill(18, 28, 'gravelPack');

describe('a sanitary seal', () => {
  // 3 m: published designs of hand-drilled wells; 6 m in rock: codes of several states.
  it.each(['open', 'backfill', 'naturalCollapse', 'gravelPack'] as const)(
    'is wanting, which is grave, where %s stands in its place',
    (kind) => {
      expect(verdictOf('seal.none', filled(fill(0, 18, kind), pack)).findings).toEqual([
        {
          code: 'seal.none',
          severity: 'error',
          path: 'annulus[0]',
          fromM: 0,
          toM: 3,
          values: { fill: kind, wantedM: 3 },
        },
      ]);
    },
  );

  it.each(['claySeal', 'bentonite', 'cementGrout', 'concrete'] as const)('may be %s', (kind) => {
    expect(verdictOf('seal.none', filled(fill(0, 3, kind as FillKind), pack))).toEqual(met);
  });

  it('is there where it begins lower but was called the seal', () => {
    const low = filled(fill(0, 4, 'backfill'), fill(4, 8, 'claySeal', { sanitary: true }), pack);
    expect(verdictOf('seal.none', low)).toEqual(met);
    const other = filled(fill(0, 4, 'backfill'), fill(4, 8, 'claySeal'), pack);
    expect(verdictOf('seal.none', other).findings).toHaveLength(1);
  });

  it('is not the collar of a pad, which ends where a seal is to begin', () => {
    const collar = filled(fill(0, 0.5, 'concrete'), fill(0.5, 18, 'backfill'), pack);
    expect(verdictOf('seal.none', collar).findings).toMatchObject([
      { path: 'annulus[1]', values: { fill: 'backfill' } },
    ]);
    const deeper = filled(fill(0, 0.6, 'concrete'), fill(0.6, 18, 'backfill'), pack);
    expect(verdictOf('seal.none', deeper)).toEqual(met);
    expect(verdictOf('seal.short', deeper).findings).toHaveLength(1);
  });

  it('is looked for next to the wall of the hole, outside a surface casing', () => {
    const surface = stringOf([{ ...pipe, outside: 160, wall: 5 }, 10]);
    const inner = stringOf([pipe, 20], [slotted, 26], [pipe, 28]);
    const strings = [surface, inner];
    const inside = fill(0, 6, 'cementGrout', { around: 1 });
    const outside = fill(0, 10, 'cementGrout', { around: 0 });
    const loose = fill(0, 10, 'backfill', { around: 0 });
    expect(verdictOf('seal.none', { strings, annulus: [outside] })).toEqual(met);
    expect(verdictOf('seal.none', { strings, annulus: [loose, inside] }).findings).toMatchObject([
      { path: 'annulus[0]', values: { fill: 'backfill' } },
    ]);
  });

  it('cannot be judged where nobody wrote what stands in the upper metres', () => {
    expect(verdictOf('seal.none', filled(fill(1, 18, 'backfill'), pack))).toMatchObject({
      findings: [],
      missing: [{ what: 'fills', path: 'annulus', fromM: 0, toM: 1 }],
    });
    expect(verdictOf('seal.none', { annulus: [] }).missing).toEqual([
      { what: 'fills', path: 'annulus' },
    ]);
  });

  it('is asked of a cased hole without screens too, but not of one given up', () => {
    const strings = [stringOf([pipe, 28])];
    const bare = filled(fill(0, 28, 'backfill'));
    expect(verdictOf('seal.none', { ...bare, strings }).findings).toHaveLength(1);
    const identity = { state: 'abandonedAndSealed' as const };
    expect(verdictOf('seal.none', { ...bare, identity })).toEqual(passedBy);
  });
});
