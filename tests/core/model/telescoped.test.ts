import { describe, expect, it } from 'vitest';
import type { CasingString } from '../../../core/record/strings.ts';
import { resolve, said } from './well.ts';

/** Litres a metre of a circle, by hand: π/4 × d² with d in metres, times 1000. */
const perMetre = {
  hole300: 70.6858, // 0.785398 × 0.09
  hole200: 31.4159, // 0.785398 × 0.04
  outside219: 37.6685, // 0.785398 × 0.047961
  inside207: 33.6535, // 0.785398 × 0.042849
  outside125: 12.2718, // 0.785398 × 0.015625
  inside113: 10.0288, // 0.785398 × 0.012769
};

/** 20.5 m of pipe with its foot at 20 m: 0.50 m stand out of the ground. */
const conductor: CasingString = {
  components: [{ kind: 'plain', outside: 219, wall: 6, length: 20.5 }],
  set: { by: 'bottom', depth: 20 },
};

/** 2 + 20 + 21 = 43 m with its foot at 58 m: its top hangs at 15 m, within the conductor. */
const liner: CasingString = {
  components: [
    { kind: 'cap' },
    { kind: 'sump', outside: 125, wall: 6, length: 2 },
    { kind: 'screen', outside: 125, wall: 6, length: 20 },
    { kind: 'plain', outside: 125, wall: 6, length: 21 },
  ],
  set: { by: 'bottom', depth: 58 },
};

const bore = {
  sections: [
    { from: 0, to: 20, diameter: 300 },
    { from: 20, to: 60, diameter: 200 },
  ],
};
const strings = [conductor, liner];
const annulus = [
  { from: 0, to: 20, fill: 'cementGrout' as const, around: 0 },
  { from: 16, to: 60, fill: 'gravelPack' as const, around: 1 },
];
const rest = (reading: number) => ({
  ...{ reading, datum: 'casingTop' as const, state: 'static' as const },
});
const well = { bore, strings, annulus, levels: [rest(8.5)] };

describe('a liner that hangs in a conductor', () => {
  const model = resolve(well);

  it('stands where its tally and its foot put it, with nothing odd about it', () => {
    expect(model.strings.map(({ topM, bottomM }) => [topM, bottomM])).toEqual([
      [-0.5, 20],
      [15, 58],
    ]);
    expect(model.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('does not give the datum of a reading while the conductor reaches the surface', () => {
    // 8.50 − 0.50 = 8.00 m; from the liner's top it would be 23.50 m.
    expect(model.levels.map(({ depthM }) => depthM)).toEqual([8]);
    expect(said(model, 'level.stickUpAssumed')).toEqual([]);
  });

  it('gives the datum where no other string stands in the hole', () => {
    // Read from the liner's top at 15 m: 15 + 2 = 17 m below ground.
    const alone = resolve({ bore, strings: [liner], levels: [rest(2)] });
    expect(alone.levels.map(({ depthM }) => depthM)).toEqual([17]);
  });

  it('takes its own outside from what the conductor holds, below its top only', () => {
    // −0.5 to 15 m whole: 33.6535 × 15.5 = 521.63; 15 to 20 m: (33.6535 − 12.2718) × 5 = 106.91.
    const [outer, inner] = model.contents;
    const held = perMetre.inside207 * 15.5 + (perMetre.inside207 - perMetre.outside125) * 5;
    expect(held).toBeCloseTo(628.54, 1);
    expect(outer?.litres).toBeCloseTo(held, 1);
    expect(inner).toMatchObject({ string: 1, fromM: 15, toM: 58 });
    expect(inner?.litres).toBeCloseTo(perMetre.inside113 * 43, 1); // 431.24
  });

  it('has water in it from its top, and the conductor from the rest level', () => {
    // Conductor from 8 to 15 m: 33.6535 × 7 = 235.57, and the 106.91 beside the liner.
    const [outer, inner] = model.contents;
    expect(outer?.waterLitres).toBeCloseTo(342.48, 1);
    expect(inner?.waterLitres).toBeCloseTo(431.24, 1);
  });

  it('has water from a rest level that stands within it, and the conductor none', () => {
    // Read at 25.5 m from the casing top: 25 m. Liner 25 to 58 m: 10.0288 × 33 = 330.95.
    const [outer, inner] = resolve({ ...well, levels: [rest(25.5)] }).contents;
    expect(outer?.waterLitres).toBe(0);
    expect(inner?.waterLitres).toBeCloseTo(330.95, 1);
  });

  it('has one pack through the conductor, past its shoe and under its own foot', () => {
    const pack = model.annulus.find(({ fill }) => fill === 'gravelPack');
    expect(pack?.rings).toEqual([
      { fromM: 16, toM: 20, innerMm: 125, outerMm: 207 },
      { fromM: 20, toM: 58, innerMm: 125, outerMm: 200 },
      { fromM: 58, toM: 60, innerMm: 0, outerMm: 200 },
    ]);
    const inConductor = (perMetre.inside207 - perMetre.outside125) * 4; // 85.53
    const inHole = (perMetre.hole200 - perMetre.outside125) * 38; // 727.48
    const underFoot = perMetre.hole200 * 2; // 62.83
    expect(inConductor + inHole + underFoot).toBeCloseTo(875.83, 1);
    expect(pack?.litres).toBeCloseTo(875.83, 1);
  });

  it('leaves the metre over its pack unrecorded, and says of which string', () => {
    const bare = model.annulus.filter(({ fill }) => fill === 'unrecorded');
    expect(bare).toMatchObject([{ fromM: 15, toM: 16, around: 1 }]);
    expect(bare[0]?.litres).toBeCloseTo(21.38, 2); // 33.6535 − 12.2718
    expect(said(model, 'annulus.unrecorded')).toMatchObject([{ fromM: 15, toM: 16 }]);
  });

  it('sums up so that hole is pipes and annulus', () => {
    const { boreLitres, displacedLitres, annulusLitres, screenM } = model.totals;
    // 70.6858 × 20 + 31.4159 × 40 = 2670.35.
    expect(boreLitres).toBeCloseTo(2670.35, 1);
    // 37.6685 × 15 + 12.2718 × 43 + conductor's wall (37.6685 − 33.6535) × 5 = 1112.79.
    expect(displacedLitres).toBeCloseTo(1112.79, 1);
    // Grout (70.6858 − 37.6685) × 20 = 660.35; pack 875.83; bare 21.38.
    expect(annulusLitres).toBeCloseTo(1557.56, 1);
    expect((displacedLitres ?? 0) + (annulusLitres ?? 0)).toBeCloseTo(boreLitres ?? 0, 6);
    expect(screenM).toBe(20);
  });
});

describe('a conductor of which the wall is not known', () => {
  const bare: CasingString = {
    ...conductor,
    components: [{ kind: 'plain', outside: 219, length: 20.5 }],
  };
  const model = resolve({ ...well, strings: [bare, liner] });

  it('holds nobody knows what, while the liner’s own litres are told', () => {
    expect(model.contents.map(({ string }) => string)).toEqual([1]);
  });

  it('leaves open the pack within it and the sums, not the grout round it', () => {
    const litres = (kind: string) => model.annulus.find(({ fill }) => fill === kind)?.litres;
    expect(litres('gravelPack')).toBeUndefined();
    expect(litres('cementGrout')).toBeCloseTo(660.35, 1);
    expect(model.totals).toMatchObject({ boreLitres: expect.closeTo(2670.35, 1) });
    expect(model.totals.displacedLitres).toBeUndefined();
    expect(model.totals.annulusLitres).toBeUndefined();
  });
});

describe('a reducer', () => {
  /** From 160 mm below to 110 mm above over 1 m, wall 5 mm. */
  const reducer = { kind: 'reducer' as const, outside: 160, upperOutside: 110, wall: 5, length: 1 };
  const only = resolve({
    bore: { sections: [{ from: 0, to: 1, diameter: 250 }] },
    strings: [{ components: [reducer], set: { by: 'bottom', depth: 1 } }],
    annulus: [{ from: 0, to: 1, fill: 'gravelPack' }],
  });

  it('takes up a cone of the hole', () => {
    // V = π/12 × (0.16² + 0.16 × 0.11 + 0.11²) × 1 m = 0.261799 × 0.0553 = 14.4775 L.
    expect(only.totals.displacedLitres).toBeCloseTo(14.4775, 3);
    // Hole 0.785398 × 0.0625 = 49.087 L, less the cone: 34.610 L.
    expect(only.annulus[0]?.litres).toBeCloseTo(34.61, 2);
  });

  it('holds the cone within its walls', () => {
    // π/12 × (0.15² + 0.15 × 0.10 + 0.10²) × 1 m = 0.261799 × 0.0475 = 12.435 L.
    expect(only.contents[0]?.litres).toBeCloseTo(12.435, 3);
  });
});
