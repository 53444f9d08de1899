import type { AnnulusFill } from '../../core/record/annulus.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { Component } from '../../core/record/strings.ts';

const pipe = { outside: 110, wall: 4.2, material: 'uPVC' } as const;

/** A well of one string that stands on a depth, in a hole of 200 mm. */
function wellOf(
  depthM: number,
  components: readonly Component[],
  annulus: readonly AnnulusFill[],
): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'T', state: 'laidOut' },
    bore: { sections: [{ from: 0, to: depthM, diameter: 200 }], depthReached: depthM },
    strings: [{ components: [...components], set: { by: 'bottom', depth: depthM } }],
    annulus: [...annulus],
  };
}

/** A tally of as many whole pipes as asked for, and a cut one, with five fills. */
export function wellOfPipes(plain: number): WellRecord {
  const gainM = 2.9;
  const depthM = Math.round((1 + 3 * gainM + plain * gainM + 0.5) * 100) / 100;
  const rest = depthM - 14;
  return wellOf(
    depthM,
    [
      { kind: 'cap', outside: 110 },
      { kind: 'sump', ...pipe, length: 1 },
      { kind: 'screen', ...pipe, count: 3, length: 3, insertion: 0.1, slotWidth: 0.75 },
      { kind: 'plain', ...pipe, count: plain, length: 3, insertion: 0.1 },
      { kind: 'plain', ...pipe, length: 1.1, insertion: 0.1 },
    ],
    [
      { from: 0, to: 3, fill: 'cementGrout', sanitary: true },
      { from: 3, to: rest - 2, fill: 'backfill' },
      { from: rest - 2, to: rest, fill: 'claySeal' },
      { from: rest, to: depthM, fill: 'gravelPack', grainMin: 1, grainMax: 2 },
    ],
  );
}

/** Tallies that try the tables: very short, very long, many strings, unnamed and endless words. */
export const awkwardTallies: Readonly<Record<string, WellRecord>> = {
  threeMetres: wellOf(
    3,
    [
      { kind: 'screen', ...pipe, length: 1 },
      { kind: 'plain', ...pipe, length: 2.5 },
    ],
    [
      { from: 0, to: 1, fill: 'concrete', sanitary: true },
      { from: 1, to: 3, fill: 'gravelPack' },
    ],
  ),
  twentyFivePipes: wellOfPipes(19),
  ninetyCentralisers: wellOf(
    60,
    Array.from({ length: 30 }, (_, at) => ({
      kind: 'plain' as const,
      ...pipe,
      length: 2.02,
      centralisers: [0.2 + at * 0.02, 0.9 + at * 0.02, 1.3 + at * 0.02],
    })),
    [],
  ),
  belowGround: wellOf(20, [{ kind: 'plain', ...pipe, count: 5, length: 3 }], []),
  fourStrings: {
    schemaVersion: 1,
    bore: {
      sections: [
        { from: 0, to: 6, diameter: 600 },
        { from: 6, to: 150, diameter: 400 },
      ],
    },
    strings: [508, 339, 244, 168].map((outside, at) => ({
      name: `String with a rather long name, number ${at + 1} of four`,
      components: [{ kind: 'plain' as const, outside, count: 2 + at * 4, length: 6 }],
      set: { by: 'stickUp' as const, height: 0.4 },
    })),
    annulus: [{ from: 0, to: 10, fill: 'cementGrout', around: 1, sackMass: 42.5 }],
  },
  typedWithoutMark: wellOf(
    4500,
    [{ kind: 'plain', ...pipe, count: 3, length: 1500 }],
    [{ from: 0, to: 4500, fill: 'gravelPack', grainMin: 1.25, grainMax: 2.75 }],
  ),
  contradicted: {
    ...wellOfPipes(3),
    layingOut: { remark: 'Ask before the gravel. '.repeat(60) },
    log: [{ from: 5, to: 2, material: 'clay' }],
  },
};
