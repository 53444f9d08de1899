import { describe, expect, it } from 'vitest';
import type { AnnulusFill } from '../../../core/record/annulus.ts';
import type { WellModel } from '../../../core/model/wellModel.ts';
import { pipe110, resolve, said } from './well.ts';

const bore = { sections: [{ from: 0, to: 30, diameter: 200 }] };
const cased = (foot: number) => ({
  components: [{ ...pipe110, length: foot + 0.5 }],
  set: { by: 'bottom' as const, depth: foot },
});

const single = (annulus: AnnulusFill[], foot = 30) =>
  resolve({ bore, strings: [cased(foot)], annulus });

const zones = ({ annulus }: WellModel) =>
  annulus.map(({ fromM, toM, fill }) => [fromM, toM, fill] as const);

describe('the annulus of one string', () => {
  it('has an unrecorded zone wherever nobody wrote a fill', () => {
    const model = single([
      { from: 15, to: 28, fill: 'gravelPack' },
      { from: 1, to: 3, fill: 'cementGrout', sanitary: true },
    ]);
    expect(zones(model)).toEqual([
      [0, 1, 'unrecorded'],
      [1, 3, 'cementGrout'],
      [3, 15, 'unrecorded'],
      [15, 28, 'gravelPack'],
      [28, 30, 'unrecorded'],
    ]);
    expect(model.annulus[1]).toMatchObject({ sanitary: true, around: 0, path: 'annulus[1]' });
    expect(said(model, 'annulus.unrecorded').map(({ fromM }) => fromM)).toEqual([0, 3, 28]);
  });

  it('keeps the lower of two overlapping fills to its top', () => {
    const model = single([
      { from: 10, to: 15.5, fill: 'claySeal' },
      { from: 15, to: 30, fill: 'gravelPack' },
      { from: 0, to: 10, fill: 'backfill' },
    ]);
    expect(zones(model)).toEqual([
      [0, 10, 'backfill'],
      [10, 15, 'claySeal'],
      [15, 30, 'gravelPack'],
    ]);
    expect(said(model, 'annulus.overlap')).toMatchObject([
      {
        severity: 'error',
        fromM: 15,
        toM: 15.5,
        values: { fill: 'gravelPack', other: 'claySeal' },
      },
    ]);
  });

  it('keeps a fill within another, and says what was poured once', () => {
    const model = single([
      { from: 0, to: 30, fill: 'backfill', litres: 600 },
      { from: 5, to: 6, fill: 'bentonite', sacks: 1, sackMass: 22 },
    ]);
    expect(zones(model)).toEqual([
      [0, 5, 'backfill'],
      [5, 6, 'bentonite'],
      [6, 30, 'backfill'],
    ]);
    expect(model.annulus.map(({ pouredLitres }) => pouredLitres)).toEqual([600, 20, undefined]);
  });

  it('fills the whole hole under the foot of the string, in one zone', () => {
    const model = single([{ from: 20, to: 30, fill: 'gravelPack' }], 28);
    const zone = model.annulus.at(-1);
    expect(zone?.rings).toEqual([
      { fromM: 20, toM: 28, innerMm: 110, outerMm: 200 },
      { fromM: 28, toM: 30, innerMm: 0, outerMm: 200 },
    ]);
    // π/4 × (0.2² − 0.11²) × 8 m + π/4 × 0.2² × 2 m = 0.17530 + 0.06283 m³.
    expect(zone?.litres).toBeCloseTo(238.133, 2);
  });

  it('says a bare hole under the string apart from the annulus', () => {
    const model = single([{ from: 0, to: 28, fill: 'gravelPack' }], 28);
    expect(model.annulus[1]).toMatchObject({ fromM: 28, toM: 30, fill: 'unrecorded' });
    expect(model.annulus[1]?.around).toBeUndefined();
    expect(said(model, 'annulus.unrecordedHole')).toMatchObject([{ fromM: 28, toM: 30 }]);
    expect(said(model, 'annulus.unrecorded')).toEqual([]);
  });

  it('lets pass a gap that is shorter than a tape tells apart', () => {
    const model = single([{ from: 0, to: 29.97, fill: 'gravelPack' }], 29.97);
    expect(model.annulus[1]).toMatchObject({ fromM: 29.97, toM: 30, fill: 'unrecorded' });
    expect(model.findings).toEqual([]);
  });

  it('is cut at ground and at the foot of the hole', () => {
    const model = single([{ from: -0.2, to: 31, fill: 'gravelPack' }]);
    expect(zones(model)).toEqual([[0, 30, 'gravelPack']]);
    expect(said(model, 'annulus.aboveGround')).toMatchObject([{ fromM: -0.2, toM: 0 }]);
    expect(said(model, 'annulus.belowHole')).toMatchObject([{ fromM: 30, toM: 31 }]);
  });

  it('is in rings where the hole or the pipe changes its diameter', () => {
    const model = resolve({
      bore: {
        sections: [
          { from: 0, to: 6, diameter: 300 },
          { from: 6, to: 20, diameter: 200 },
        ],
      },
      strings: [
        {
          components: [
            { ...pipe110, length: 10 },
            { kind: 'reducer', outside: 110, upperOutside: 140, wall: 5, length: 1 },
            { kind: 'plain', outside: 140, wall: 5, length: 10 },
          ],
          set: { by: 'bottom', depth: 20 },
        },
      ],
      annulus: [{ from: 0, to: 20, fill: 'gravelPack' }],
    });
    const [zone] = model.annulus;
    const rings = zone?.rings ?? [];
    expect(rings.map(({ fromM, toM, outerMm }) => [fromM, toM, outerMm])).toEqual([
      [0, 6, 300],
      [6, 9, 200],
      [9, 10, 200],
      [10, 20, 200],
    ]);
    expect(rings[0]?.innerMm).toBe(140);
    expect(rings[3]?.innerMm).toBe(110);
    // The cone of 1 m from 140 to 110 mm: π/12 × (0.14² + 0.14 × 0.11 + 0.11²) = 12.3307 L,
    // in π/4 × 0.2² = 31.4159 L of hole.
    const { outerMm = 0, innerMm = 0 } = rings[2] ?? {};
    expect((Math.PI / 4) * (outerMm ** 2 - innerMm ** 2) * 1e-3).toBeCloseTo(19.0852, 3);
  });

  it('has no litres where a diameter is not known, but keeps the rings that are', () => {
    const model = resolve({
      bore: { depthReached: 30, sections: [{ from: 0, to: 20, diameter: 200 }] },
      strings: [cased(30)],
      annulus: [{ from: 10, to: 30, fill: 'gravelPack' }],
    });
    const zone = model.annulus[1];
    expect(zone?.rings).toEqual([{ fromM: 10, toM: 20, innerMm: 110, outerMm: 200 }]);
    expect(zone?.litres).toBeUndefined();
    expect(model.totals.annulusLitres).toBeUndefined();
    expect(model.totals.boreLitres).toBeUndefined();
  });

  it('has no litres where the string is wider than the hole', () => {
    const model = resolve({
      bore: { sections: [{ from: 0, to: 10, diameter: 100 }] },
      strings: [cased(10)],
      annulus: [{ from: 0, to: 10, fill: 'open' }],
    });
    expect(model.annulus[0]).toMatchObject({ fill: 'open', rings: [] });
    expect(model.annulus[0]?.litres).toBeUndefined();
    expect(said(model, 'string.widerThanHole')).toMatchObject([
      { severity: 'error', fromM: 0, toM: 10, values: { outsideMm: 110, holeMm: 100 } },
    ]);
  });
});

describe('a hole without a string', () => {
  it('is filled whole, as when it was abandoned', () => {
    const model = resolve({
      bore,
      annulus: [
        { from: 2, to: 30, fill: 'backfill', insideHole: true },
        { from: 0, to: 2, fill: 'cementGrout' },
      ],
    });
    expect(model.annulus.map(({ rings }) => rings[0]?.innerMm)).toEqual([0, 0]);
    expect(model.annulus.some(({ around }) => around !== undefined)).toBe(false);
    expect(model.totals.annulusLitres).toBeCloseTo(942.478, 2); // π/4 × 0.2² × 30 m
    expect(model.findings).toEqual([]);
  });

  it('has no zones where nobody filled it: it stands open', () => {
    expect(resolve({ bore }).annulus).toEqual([]);
  });

  it('is filled in the casing where that was left, and says so', () => {
    const model = single([
      { from: 0, to: 30, fill: 'cementGrout', insideHole: true },
      { from: 0, to: 30, fill: 'gravelPack' },
    ]);
    const grout = model.annulus.find(({ fill }) => fill === 'cementGrout');
    expect(grout).toMatchObject({ inside: 0, rings: [{ innerMm: 0, outerMm: 101.6 }] });
    expect(said(model, 'annulus.insideString')).toHaveLength(1);
    expect(said(model, 'annulus.overlap')).toEqual([]);
    // The grout stands within what the string takes up: 942.478 − 285.100 = 657.378 L around it.
    expect(model.totals.annulusLitres).toBeCloseTo(657.378, 2);
  });
});

describe('a telescoped well', () => {
  const conductor = {
    components: [{ kind: 'plain' as const, outside: 219, wall: 6.3, length: 6.3 }],
    set: { by: 'bottom' as const, depth: 6 },
  };
  const holes = {
    sections: [
      { from: 0, to: 6, diameter: 300 },
      { from: 6, to: 30, diameter: 200 },
    ],
  };
  const telescoped = (annulus: AnnulusFill[]) =>
    resolve({ bore: holes, strings: [conductor, cased(30)], annulus });

  it('has one annulus outside the conductor and one inside it, the inner to the wall below', () => {
    const model = telescoped([
      { from: 0, to: 6, fill: 'cementGrout' },
      { from: 0, to: 30, fill: 'gravelPack', around: 1 },
    ]);
    expect(model.annulus.map(({ fill, around, rings }) => [fill, around, rings])).toEqual([
      ['cementGrout', 0, [{ fromM: 0, toM: 6, innerMm: 219, outerMm: 300 }]],
      [
        'gravelPack',
        1,
        [
          { fromM: 0, toM: 6, innerMm: 110, outerMm: 206.4 }, // 219 − 2 × 6.3
          { fromM: 6, toM: 30, innerMm: 110, outerMm: 200 },
        ],
      ],
    ]);
    expect(model.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('takes a fill that names no string to stand next to the wall below the conductor', () => {
    const model = telescoped([{ from: 0, to: 30, fill: 'cementGrout' }]);
    expect(zones(model)).toEqual([
      [0, 6, 'cementGrout'],
      [0, 6, 'unrecorded'],
      [6, 30, 'cementGrout'],
    ]);
    expect(model.annulus.map(({ around }) => around)).toEqual([0, 1, 1]);
  });

  it('finds the outer string by its width, in whatever order they were set', () => {
    const model = resolve({ bore: holes, strings: [cased(30), conductor] });
    const outer = model.annulus.find(({ around }) => around === 1);
    expect(outer?.rings).toEqual([{ fromM: 0, toM: 6, innerMm: 219, outerMm: 300 }]);
  });

  it('says a string that is wider than the one around it', () => {
    const tight = { ...conductor, components: [{ ...conductor.components[0]!, wall: 60 }] };
    const model = resolve({ bore: holes, strings: [tight, cased(30)] });
    expect(said(model, 'string.widerThanOuter')).toMatchObject([
      { path: 'strings[1]', fromM: 0, toM: 6, values: { outsideMm: 110, insideMm: 99 } },
    ]);
  });

  it('leaves out what is filled above the top of a string that hangs in another', () => {
    const liner = {
      components: [{ ...pipe110, length: 26 }],
      set: { by: 'bottom' as const, depth: 30 },
    };
    const model = resolve({
      bore: holes,
      strings: [conductor, liner],
      annulus: [{ from: 2, to: 30, fill: 'gravelPack', around: 1 }],
    });
    const pack = model.annulus.filter(({ fill }) => fill === 'gravelPack');
    expect(pack.map(({ fromM, toM }) => [fromM, toM])).toEqual([[4, 30]]);
    expect(said(model, 'annulus.aboveString')).toHaveLength(1);
  });
});
