import { describe, expect, it } from 'vitest';
import type { AnnulusFill } from '../../../../../core/record/annulus.ts';
import { ringLitres } from '../../../../../core/base/units.ts';
import { fill, met, passedBy, pipe, stringOf, verdictOf } from './coveredWell.ts';

/** A pack from 10 to 20 m round 110 mm in a hole of 200 mm: 219.13 litres, section 8's table. */
const computed = ringLitres(200, 110, 10);
const poured = (more: Partial<AnnulusFill>, kind: AnnulusFill['fill'] = 'gravelPack') => ({
  bore: { sections: [{ from: 0, to: 20, diameter: 200 }] },
  strings: [stringOf([pipe, 20])],
  annulus: [fill(10, 20, kind, more)],
});

describe('less poured than computed', () => {
  // 95 %: common practice. Far below theory means a bridge: handbooks, from memory.
  it('is said with both figures', () => {
    expect(verdictOf('poured.little', poured({ litres: 130 })).findings).toEqual([
      {
        code: 'poured.little',
        severity: 'warning',
        path: 'annulus[0]',
        fromM: 10,
        toM: 20,
        values: {
          fill: 'gravelPack',
          poured: 130,
          computed: 219.1,
          percent: 59.3,
          limitPercent: 95,
        },
      },
    ]);
  });

  it('is not said at the limit', () => {
    expect(verdictOf('poured.little', poured({ litres: computed * 0.95 }))).toEqual(met);
    expect(verdictOf('poured.little', poured({ litres: computed * 0.949 })).findings).toHaveLength(
      1,
    );
  });

  it('is not said at the limit where a double falls short of it', () => {
    // Over 29 m, 0.95 of the volume divided by the volume is a little less than 0.95 in a double.
    const litres = ringLitres(200, 110, 29) * 0.95;
    const well = {
      bore: { sections: [{ from: 0, to: 29, diameter: 200 }] },
      strings: [stringOf([pipe, 29])],
      annulus: [fill(0, 29, 'gravelPack', { litres })],
    };
    expect(verdictOf('poured.little', well)).toEqual(met);
  });

  // V = π/4 (Dh² − OD²) L, section 8's table of annuli, tolerance 0.1 %.
  it.each([
    [150, 110, 10, 81.68],
    [165, 110, 12, 142.55],
    [200, 110, 10, 219.13],
    [200, 125, 15, 287.16],
    [250, 160, 20, 579.62],
  ])(
    'computes a hole of %d mm round %d mm over %d m as %d litres',
    (hole, outside, length, litres) => {
      const well = {
        bore: { sections: [{ from: 0, to: length, diameter: hole }] },
        strings: [stringOf([{ ...pipe, outside }, length])],
        annulus: [fill(0, length, 'gravelPack', { litres: 1 })],
      };
      const [said] = verdictOf('poured.little', well).findings;
      expect(Math.abs((said!.values.computed as number) / litres - 1)).toBeLessThan(0.001);
    },
  );

  it('sums the pours where the fill itself has no quantity', () => {
    const at = '2026-03-01T10:00';
    const pours = [
      { at, litres: 60 },
      { at, sacks: 2 },
    ];
    // 2 sacks of 50 kg at 1.6 kg/l: 62.5 litres.
    expect(verdictOf('poured.little', poured({ pours, sackMass: 50 })).findings).toMatchObject([
      { values: { poured: 122.5 } },
    ]);
    expect(verdictOf('poured.little', poured({ pours })).missing).toMatchObject([
      { what: 'poured', path: 'annulus[0]' },
    ]);
  });

  it('counts a fill that another one parts once', () => {
    const { annulus, ...rest } = poured({ litres: 200 });
    const parted = { ...rest, annulus: [...annulus, fill(14, 15, 'claySeal', { litres: 22 })] };
    expect(verdictOf('poured.little', parted)).toEqual(met);
  });
});

describe('more poured than computed', () => {
  // 10 to 25 % over is usual: handbooks, from memory.
  it('is said beyond a quarter over', () => {
    expect(verdictOf('poured.much', poured({ litres: computed * 1.25 }))).toEqual(met);
    expect(verdictOf('poured.much', poured({ litres: 280 })).findings).toMatchObject([
      { severity: 'warning', values: { poured: 280, percent: 127.8, limitPercent: 125 } },
    ]);
  });

  it('lets pass what may have stayed in the last whole sack', () => {
    // A sack of 25 kg at 1.1 kg/l fills 22.7 litres; half a metre holds 11.0, a metre 21.9.
    const { annulus, ...rest } = poured({ litres: computed });
    const clay = (fromM: number, more: Partial<AnnulusFill>) => ({
      ...rest,
      annulus: [...annulus, fill(fromM, 10, 'claySeal', { sackMass: 25, ...more })],
    });
    expect(verdictOf('poured.much', clay(9.5, { sacks: 1 }))).toEqual(met);
    expect(verdictOf('poured.much', clay(9, { sacks: 2 })).findings).toHaveLength(1);
    expect(verdictOf('poured.much', clay(9.5, { sacks: 0.9 })).findings).toHaveLength(1);
    expect(verdictOf('poured.much', clay(9.5, { litres: 20 })).findings).toHaveLength(1);
  });
});

describe.each(['poured.little', 'poured.much'] as const)('%s', (id) => {
  it('cannot be judged where nobody wrote what was poured, or what a sack weighs', () => {
    expect(verdictOf(id, poured({})).missing).toEqual([
      { what: 'poured', path: 'annulus[0]', fromM: 10, toM: 20 },
    ]);
    expect(verdictOf(id, poured({ sacks: 7 })).missing).toHaveLength(1);
    expect(verdictOf(id, poured({ litres: -1 })).missing).toHaveLength(1);
  });

  it('cannot be judged without the diameters', () => {
    const well = { ...poured({ litres: 100 }), bore: { depthReached: 20 } };
    expect(verdictOf(id, well)).toMatchObject({
      findings: [],
      missing: [{ what: 'boreDiameter', path: 'bore.sections' }],
    });
  });

  it('does not ask what was poured into a hole that was given up', () => {
    const identity = { state: 'abandonedAndSealed' as const };
    expect(verdictOf(id, { ...poured({}), identity })).toEqual(passedBy);
  });

  it('does not ask how much backfill went in', () => {
    expect(verdictOf(id, poured({}, 'backfill'))).toEqual(passedBy);
  });

  it('is not asked of a plan, of what fell in, or without fills', () => {
    expect(verdictOf(id, { ...poured({}), identity: { state: 'laidOut' } })).toEqual(passedBy);
    expect(verdictOf(id, poured({}, 'naturalCollapse'))).toEqual(passedBy);
    expect(verdictOf(id, { annulus: [] })).toEqual(passedBy);
  });

  it('speaks of a hole that was given up and filled as well', () => {
    const litres = id === 'poured.little' ? 300 : 1000;
    const filledUp = {
      identity: { state: 'dry' as const },
      bore: { sections: [{ from: 0, to: 20, diameter: 200 }] },
      strings: [],
      annulus: [fill(0, 20, 'cementGrout', { insideHole: true, litres })],
    };
    // 20 m of 200 mm hold 628 litres.
    expect(verdictOf(id, filledUp).findings).toMatchObject([{ values: { computed: 628.3 } }]);
  });
});
