import { describe, expect, it } from 'vitest';
import type { FillKind } from '../../../../../core/record/annulus.ts';
import { fill, filled, ground, met, passedBy, pipe, stringOf, verdictOf } from './coveredWell.ts';

const beside = (kind: FillKind) => filled(fill(18, 24, 'gravelPack'), fill(24, 28, kind));
const rock = { log: [ground(0, 15, 'clay'), ground(15, 28, 'granite', { fractured: true })] };
const rotten = { log: [ground(0, 28, 'granite', { weathering: 'highly' })] };

describe('a screen without pack', () => {
  it.each(['open', 'backfill', 'claySeal', 'cementGrout'] as const)(
    'is grave in loose ground beside %s',
    (kind) => {
      expect(verdictOf('pack.bare', beside(kind)).findings).toEqual([
        {
          code: 'pack.bare',
          severity: 'error',
          path: 'annulus[1]',
          fromM: 24,
          toM: 26,
          values: { fill: kind },
        },
      ]);
    },
  );

  it('is worth a note in rock, and where the ground was let fall in', () => {
    expect(verdictOf('pack.bare', { ...beside('open'), ...rock }).findings).toMatchObject([
      { severity: 'note' },
    ]);
    expect(verdictOf('pack.bare', beside('naturalCollapse')).findings).toMatchObject([
      { severity: 'note' },
    ]);
    expect(verdictOf('pack.bare', { ...beside('open'), ...rotten }).findings).toMatchObject([
      { severity: 'error' },
    ]);
  });

  it('is grave in rock too where clay shuts the slots', () => {
    expect(verdictOf('pack.bare', { ...beside('claySeal'), ...rock }).findings).toMatchObject([
      { severity: 'error' },
    ]);
  });

  it('is none where pack stands from the foot of the screen to its top', () => {
    expect(verdictOf('pack.bare', filled(fill(20, 26, 'gravelPack')))).toEqual(met);
    // Less than a tape tells apart, 0.05 m.
    const close = filled(fill(20, 25.96, 'gravelPack'), fill(25.96, 28, 'backfill'));
    expect(verdictOf('pack.bare', close)).toEqual(met);
  });

  it('cannot be judged where nobody wrote what stands there, or what ground it is', () => {
    expect(verdictOf('pack.bare', filled(fill(18, 24, 'gravelPack')))).toMatchObject({
      findings: [],
      missing: [{ what: 'fills', path: 'annulus', fromM: 24, toM: 26 }],
    });
    expect(verdictOf('pack.bare', { ...beside('open'), log: [] })).toMatchObject({
      findings: [],
      missing: [{ what: 'log', path: 'log', fromM: 24, toM: 26 }],
    });
  });

  it('says what it found beside what it misses', () => {
    const annulus = [fill(20, 22, 'gravelPack'), fill(22, 24, 'claySeal')];
    const { findings, missing } = verdictOf('pack.bare', { annulus });
    expect(findings).toMatchObject([{ fromM: 22, toM: 24 }]);
    expect(missing).toMatchObject([{ what: 'fills', fromM: 24, toM: 26 }]);
  });

  it('is not asked of a well without screens, or given up', () => {
    expect(verdictOf('pack.bare', { strings: [stringOf([pipe, 28])] })).toEqual(passedBy);
    const identity = { state: 'decommissioned' as const };
    expect(verdictOf('pack.bare', { ...beside('open'), identity })).toEqual(passedBy);
  });
});
