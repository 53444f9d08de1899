import { describe, expect, it } from 'vitest';
import { fill, filled, met, passedBy, pipe, slotted, stringOf, verdictOf } from './coveredWell.ts';

const hole = (diameter: number) => ({ bore: { sections: [{ from: 0, to: 28, diameter }] } });
const cased = (outside: number) => {
  const [plain, screen] = [pipe, slotted].map((one) => ({ ...one, outside }));
  return { strings: [stringOf([plain!, 20], [screen!, 26], [plain!, 28])] };
};

describe('room for the pack', () => {
  // 50 mm wanted: ICRC 2010, from memory. 20 mm: Practica, manual drilling, from memory.
  it('is worth a note where it is narrow, as in most hand-drilled wells', () => {
    expect(verdictOf('gap.narrow', hole(165)).findings).toEqual([
      {
        code: 'gap.narrow',
        severity: 'note',
        path: 'annulus[3]',
        fromM: 18,
        toM: 28,
        values: { gapMm: 27.5, holeMm: 165, pipeMm: 110, wantedMm: 50, graveMm: 20 },
      },
    ]);
  });

  // Gaps of the table of annuli in section 8, computed for this project.
  it.each([
    [150, 110, 20],
    [165, 110, 27.5],
    [200, 110, 45],
    [200, 125, 37.5],
    [250, 160, 45],
  ])('is half the difference of %d and %d mm: %d mm', (holeMm, pipeMm, gapMm) => {
    const { findings } = verdictOf('gap.narrow', { ...hole(holeMm), ...cased(pipeMm) });
    expect(findings).toMatchObject([{ severity: 'note', values: { gapMm } }]);
  });

  it('meets its limits where it is just there', () => {
    expect(verdictOf('gap.narrow', hole(210))).toEqual(met);
    expect(verdictOf('gap.narrow', hole(209.9)).findings).toHaveLength(1);
    // In a double 140.2 − 100.2 is a little less than 40, and 200.2 − 100.2 a little less than 100.
    expect(verdictOf('gap.narrow', { ...hole(140.2), ...cased(100.2) }).findings).toMatchObject([
      { severity: 'note', values: { gapMm: 20 } },
    ]);
    expect(verdictOf('gap.narrow', { ...hole(200.2), ...cased(100.2) })).toEqual(met);
  });

  it('is grave below 20 mm as long as something can still be changed, else to be looked at', () => {
    const tight = hole(149);
    expect(verdictOf('gap.narrow', tight).findings).toMatchObject([{ severity: 'warning' }]);
    for (const state of ['laidOut', 'drilled'] as const)
      expect(verdictOf('gap.narrow', { ...tight, identity: { state } }).findings).toMatchObject([
        { severity: 'error' },
      ]);
  });

  it('is less in machine-drilled rock: 25 mm, and 15 mm at least', () => {
    const rock = (diameter: number) => ({
      bore: { ...hole(diameter).bore, method: 'downTheHoleHammer' as const },
    });
    expect(verdictOf('gap.narrow', rock(160))).toEqual(met);
    expect(verdictOf('gap.narrow', rock(140)).findings).toMatchObject([
      { severity: 'note', values: { gapMm: 15, graveMm: 15 } },
    ]);
  });

  it('names the narrowest part where the hole changes', () => {
    const sections = [
      { from: 0, to: 22, diameter: 250 },
      { from: 22, to: 25, diameter: 165 },
      { from: 25, to: 28, diameter: 150 },
    ];
    expect(verdictOf('gap.narrow', { bore: { sections } }).findings).toMatchObject([
      { fromM: 22, toM: 28, values: { gapMm: 20, holeMm: 150 } },
    ]);
  });

  it('cannot be judged without the diameters, and says which', () => {
    expect(verdictOf('gap.narrow', { bore: { depthReached: 28 } })).toMatchObject({
      findings: [],
      missing: [{ what: 'boreDiameter', path: 'bore.sections', fromM: 18, toM: 28 }],
    });
    const strings = [stringOf([pipe, 20], [{ kind: 'screen' }, 26], [pipe, 28])];
    const { findings, missing } = verdictOf('gap.narrow', { ...hole(165), strings });
    expect(missing).toEqual([{ what: 'pipeDiameter', path: 'strings[0].components[1].outside' }]);
    expect(findings).toMatchObject([{ values: { gapMm: 27.5 } }]);
  });

  it('cannot be judged where nobody wrote whether pack stands round the screen', () => {
    expect(verdictOf('gap.narrow', filled(fill(0, 18, 'cementGrout')))).toMatchObject({
      findings: [],
      missing: [{ what: 'fills', path: 'annulus', fromM: 20, toM: 26 }],
    });
  });

  it('is not asked round a pipe for a tape only', () => {
    expect(verdictOf('gap.narrow', { ...hole(112), ...cased(19) })).toEqual(passedBy);
  });

  it('is not asked where no pack stands, or of a hole given up', () => {
    expect(verdictOf('gap.narrow', filled(fill(0, 28, 'naturalCollapse')))).toEqual(passedBy);
    expect(verdictOf('gap.narrow', { ...hole(149), identity: { state: 'dry' } })).toEqual(passedBy);
  });
});
