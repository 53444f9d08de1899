import { describe, expect, it } from 'vitest';
import { pipe110, resolve, said } from './well.ts';

const sections = [
  { from: 6, to: 30, diameter: 150 },
  { from: 0, to: 6, diameter: 250 },
];

describe('the hole', () => {
  it('has its sections in order of depth, each leading back to the record', () => {
    const { bore, findings } = resolve({ bore: { sections } });
    expect(bore.sections).toEqual([
      { fromM: 0, toM: 6, diameterMm: 250, path: 'bore.sections[1]' },
      { fromM: 6, toM: 30, diameterMm: 150, path: 'bore.sections[0]' },
    ]);
    expect(bore.depthM).toBe(30);
    expect(findings).toEqual([]);
  });

  it('is as wide as its widest bit where a section was reamed', () => {
    const model = resolve({
      bore: {
        sections: [
          { from: 0, to: 30, diameter: 150 },
          { from: 5, to: 8, diameter: 250 },
        ],
      },
    });
    expect(
      model.bore.sections.map(({ fromM, toM, diameterMm }) => [fromM, toM, diameterMm]),
    ).toEqual([
      [0, 5, 150],
      [5, 8, 250],
      [8, 30, 150],
    ]);
    expect(said(model, 'bore.overlap')).toMatchObject([
      { path: 'bore.sections[1]', fromM: 5, toM: 8, values: { diameterMm: 250, otherMm: 150 } },
    ]);
  });

  it('says each stretch without a diameter, to the depth reached', () => {
    const model = resolve({
      bore: {
        depthReached: 40,
        sections: [
          { from: 1, to: 10, diameter: 200 },
          { from: 12, to: 30, diameter: 150 },
        ],
      },
    });
    expect(said(model, 'bore.gap').map(({ fromM, toM }) => [fromM, toM])).toEqual([
      [0, 1],
      [10, 12],
      [30, 40],
    ]);
  });

  it('says once, as a note, that none of its diameters is recorded', () => {
    const model = resolve({ bore: { depthReached: 40 } });
    expect(model.findings).toMatchObject([
      { code: 'bore.diametersUnknown', severity: 'note', path: 'bore.sections', fromM: 0, toM: 40 },
    ]);
  });

  it('says a section without diameter by itself, and not again as a gap', () => {
    const model = resolve({
      bore: {
        depthReached: 40,
        sections: [
          { from: 0, to: 10, diameter: 200 },
          { from: 10, to: 30, diameter: 0 },
        ],
      },
    });
    expect(said(model, 'bore.noDiameter')).toMatchObject([{ fromM: 10, toM: 30 }]);
    expect(said(model, 'bore.gap')).toMatchObject([{ fromM: 30, toM: 40 }]);
    const bare = resolve({
      bore: { sections: [{ from: 0, to: 30, diameter: 0 }], depthReached: 30 },
    });
    expect(bare.findings.map(({ code }) => code)).toEqual(['bore.noDiameter']);
  });

  it('is cut at the depth reached, with an error for what lies under it', () => {
    const model = resolve({ bore: { sections, depthReached: 28 } });
    expect(model.bore.depthM).toBe(28);
    expect(model.bore.sections.at(-1)?.toM).toBe(28);
    expect(said(model, 'bore.sectionBelowDepth')).toMatchObject([
      { severity: 'error', path: 'bore.sections[0]', fromM: 28, toM: 30 },
    ]);
  });

  it('takes the deepest of log and string where the bore says nothing, with a note', () => {
    const strings = [
      { components: [{ ...pipe110, length: 12 }], set: { by: 'bottom' as const, depth: 11.5 } },
    ];
    const byLog = resolve({ log: [{ from: 0, to: 14 }], strings });
    expect(byLog.bore.depthM).toBe(14);
    const byString = resolve({ log: [{ from: 0, to: 9 }], strings });
    expect(byString.bore.depthM).toBe(11.5);
    expect(said(byString, 'bore.depthAssumed')).toMatchObject([
      { severity: 'note', path: 'bore.depthReached', values: { depthM: 11.5 } },
    ]);
  });

  it('passes over a depth reached that is not below ground', () => {
    const model = resolve({ bore: { sections, depthReached: -30 } });
    expect(model.bore.depthM).toBe(30);
    expect(said(model, 'bore.depthNotBelowGround')).toHaveLength(1);
  });

  it('has no depth when nothing tells, and an empty record has no findings', () => {
    const model = resolve({});
    expect(model.bore).toEqual({ sections: [] });
    expect(model.findings).toEqual([]);
    expect(model.totals).toEqual({ screenM: 0 });
  });

  it('was found no deeper than it was drilled', () => {
    const found = (depthFound: number) =>
      said(resolve({ bore: { sections, depthReached: 30, depthFound } }), 'bore.foundBelowDepth');
    expect(found(30)).toEqual([]);
    expect(found(30.5)).toMatchObject([{ path: 'bore.depthFound', fromM: 30.5 }]);
  });

  it('keeps the depth found by sounding only where it differs', () => {
    expect(resolve({ bore: { sections, depthFound: 30 } }).bore.foundM).toBeUndefined();
    expect(resolve({ bore: { sections, depthFound: 29.2 } }).bore.foundM).toBe(29.2);
  });
});
