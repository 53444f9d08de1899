import fc from 'fast-check';
import type { AnnulusFill } from '../../core/record/annulus.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { CasingString, Component } from '../../core/record/strings.ts';

/**
 * Random wells as crews make them: every measure in whole centimetres, every part fitting the
 * next, some things left out as in real records.
 */

type Json = Pick<WellRecord, 'samples' | 'log' | 'levels' | 'strikes' | 'pump'>;

/** Outside diameter and wall, mm, of pressure pipe (ISO 1452 sizes, from memory). */
const pipes = [
  { outside: 110, wall: 4.2 },
  { outside: 125, wall: 4.8 },
  { outside: 140, wall: 5.4 },
  { outside: 160, wall: 6.2 },
] as const;

const groundMaterials = [
  'topsoil',
  'clay',
  'silt',
  'sand',
  'gravel',
  'laterite',
  'granite',
] as const;

const centimetres = (from: number, to: number) =>
  fc.integer({ min: Math.round(from * 100), max: Math.round(to * 100) });

/** Depths strictly between two others, in order, at least 10 cm apart; all in centimetres. */
function innerCuts(fromCm: number, toCm: number, most: number): fc.Arbitrary<number[]> {
  return fc
    .uniqueArray(fc.integer({ min: Math.ceil(fromCm / 10) + 1, max: Math.floor(toCm / 10) - 1 }), {
      maxLength: most,
    })
    .map((cuts) => cuts.map((cut) => cut * 10).sort((a, b) => a - b));
}

function intervals(boundsCm: readonly number[]): { from: number; to: number }[] {
  return boundsCm.slice(1).map((to, at) => ({ from: (boundsCm[at] ?? 0) / 100, to: to / 100 }));
}

/** A sample from each whole metre. */
function metres(depthCm: number): { from: number; to: number }[] {
  return [...Array(Math.floor(depthCm / 100)).keys()].map((from) => ({ from, to: from + 1 }));
}

function groundAndWater(depthCm: number): fc.Arbitrary<Json> {
  return fc
    .record({
      cuts: innerCuts(0, depthCm, 7),
      materials: fc.array(fc.constantFrom(...groundMaterials), { minLength: 8, maxLength: 8 }),
      restCm: fc.integer({ min: 100, max: Math.floor(depthCm / 2) }),
      datum: fc.constantFrom('ground', 'casingTop'),
    })
    .map(({ cuts, materials, restCm, datum }) => ({
      samples: metres(depthCm),
      log: intervals([0, ...cuts, depthCm]).map((range, at) => ({
        ...range,
        material: materials[at] ?? 'sand',
      })),
      levels: [
        { at: '2021-03-04T08:00:00+02:00', reading: restCm / 100, datum, state: 'static' },
        { reading: restCm / 100 + 1.5, datum: 'ground', state: 'pumping', rate: 1.2 },
      ],
      strikes: [{ depth: restCm / 100 + 1, rise: restCm / 100 }],
      pump: { kind: 'directAction', intake: restCm / 100 + 2, bodyDiameter: 63 },
    }));
}

interface StringPlan {
  readonly footCm: number;
  readonly outside: number;
  readonly wall: number;
  readonly screens: number;
  readonly sumpCm: number;
  readonly insertionCm: number;
  readonly stickUpCm: number;
  readonly set: 'bottom' | 'stickUp';
}

/** A tally that reaches from the foot to the stick-up: whole pipes of 3 m and one cut pipe. */
function tally(plan: StringPlan): Component[] {
  const { outside, wall, insertionCm, sumpCm, footCm, stickUpCm } = plan;
  const pipe = { outside, wall, material: 'uPVC' };
  const joint = { insertion: insertionCm / 100 };
  const gainCm = 300 - insertionCm;
  const room = footCm + stickUpCm - sumpCm - insertionCm - 20;
  // Two metres under ground stay without slots.
  const slotted = Math.max(Math.floor((footCm - sumpCm - 200) / gainCm), 0);
  const screens = Math.min(plan.screens, slotted);
  const whole = Math.floor((room - screens * gainCm) / gainCm);
  const cutCm = footCm + stickUpCm - sumpCm - (screens + whole) * gainCm + insertionCm;
  return [
    { kind: 'cap', outside },
    { kind: 'sump', ...pipe, length: sumpCm / 100 },
    { kind: 'screen', ...pipe, ...joint, count: screens, length: 3, slotWidth: 0.75 },
    { kind: 'plain', ...pipe, ...joint, count: whole, length: 3, centralisers: [1.5] },
    { kind: 'plain', ...pipe, ...joint, length: cutCm / 100 },
  ];
}

function casing(plan: StringPlan): CasingString {
  return {
    components: tally(plan),
    set:
      plan.set === 'bottom'
        ? { by: 'bottom', depth: plan.footCm / 100 }
        : { by: 'stickUp', height: plan.stickUpCm / 100 },
  };
}

function plan(footCm: number, size: { outside: number; wall: number }): fc.Arbitrary<StringPlan> {
  return fc
    .record({
      screens: fc.integer({ min: 0, max: 4 }),
      sumpCm: centimetres(0.5, 1.5),
      insertionCm: centimetres(0, 0.15),
      stickUpCm: centimetres(0.2, 0.8),
      set: fc.constantFrom('bottom' as const, 'stickUp' as const),
    })
    .map((rest) => ({ ...rest, ...size, footCm }));
}

const fillOrder = ['cementGrout', 'backfill', 'claySeal', 'gravelPack', 'bentonite'] as const;

/** Fills from ground to the foot of the hole, some stretches left out as nobody wrote them. */
function fills(toCm: number, around: number): fc.Arbitrary<AnnulusFill[]> {
  return fc
    .record({
      cuts: innerCuts(0, toCm, 4),
      written: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
      bottomUp: fc.boolean(),
    })
    .map(({ cuts, written, bottomUp }) => {
      const all = intervals([0, ...cuts, toCm]).map((range, at) => ({
        ...range,
        fill: fillOrder[at] ?? 'gravelPack',
        ...(around === 0 ? {} : { around }),
      }));
      const kept = all.filter((_, at) => written[at]);
      return bottomUp ? kept.reverse() : kept;
    });
}

/** One string in a hole of one or two diameters. */
export const singleStringWell: fc.Arbitrary<WellRecord> = fc
  .record({
    depthCm: centimetres(8, 80),
    belowFootCm: centimetres(0, 1),
    size: fc.constantFrom(...pipes),
    gapMm: fc.integer({ min: 15, max: 60 }),
    reamedMm: fc.constantFrom(0, 50, 100),
  })
  .chain(({ depthCm, belowFootCm, size, gapMm, reamedMm }) =>
    fc
      .record({
        plan: plan(depthCm - belowFootCm, size),
        annulus: fills(depthCm, 0),
        rest: groundAndWater(depthCm),
        reamedCm: centimetres(2, 6),
      })
      .map(({ plan, annulus, rest, reamedCm }) => {
        const diameter = size.outside + 2 * gapMm;
        const lower = { from: reamedCm / 100, to: depthCm / 100, diameter };
        const upper = { from: 0, to: reamedCm / 100, diameter: diameter + reamedMm };
        return {
          schemaVersion: 1 as const,
          bore: { sections: [upper, lower], depthReached: depthCm / 100 },
          strings: [casing(plan)],
          annulus,
          ...rest,
        };
      }),
  );

/** A conductor in a wide upper hole, and a string through it in the narrower hole below. */
export const telescopedWell: fc.Arbitrary<WellRecord> = fc
  .record({
    depthCm: centimetres(20, 90),
    conductorCm: centimetres(3, 12),
    size: fc.constantFrom(...pipes.slice(0, 2)),
  })
  .chain(({ depthCm, conductorCm, size }) =>
    fc
      .record({
        outer: plan(conductorCm, { outside: 219, wall: 6.3 }),
        inner: plan(depthCm, size),
        outerFills: fills(conductorCm, 0),
        innerFills: fills(depthCm, 1),
        rest: groundAndWater(depthCm),
      })
      .map(({ outer, inner, outerFills, innerFills, rest }) => ({
        schemaVersion: 1 as const,
        bore: {
          sections: [
            { from: 0, to: conductorCm / 100, diameter: 270 },
            { from: conductorCm / 100, to: depthCm / 100, diameter: 200 },
          ],
          depthReached: depthCm / 100,
        },
        // A conductor stands open at its foot and has no slots.
        strings: [
          {
            components: casing({ ...outer, screens: 0 }).components.slice(1),
            set: casing(outer).set!,
          },
          casing(inner),
        ],
        annulus: [...outerFills, ...innerFills],
        ...rest,
      })),
  );

/** Any realistic well. */
export const randomWell: fc.Arbitrary<WellRecord> = fc.oneof(singleStringWell, telescopedWell);
