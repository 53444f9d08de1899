import type { Random } from '../../../core/base/random.ts';
import { drawnFrom, rounded, screenLengths, yields } from './spread.ts';

const pipe = {
  ...{ material: 'uPVC', outside: 125, wall: 4.8, length: 3 },
  ...{ joint: 'glued bell', insertion: 0.14 },
};
const slots = { slotWidth: 0.75, slotSpacing: 8, slotRows: 3, openArea: 5.6 };

/** A string with a screen at its foot, and what stands round it. */
export function madeCompletion(depth: number, random: Random): object {
  const screens = Math.max(1, Math.round(drawnFrom(screenLengths, random) / 2.86));
  const joints = Math.ceil((depth + 0.5) / 2.86);
  const packTop = rounded(Math.max(2, depth - screens * 2.86 - 4), 1);
  const sealTop = Math.max(1.5, packTop - 2);
  return {
    strings: [
      {
        name: 'Casing',
        components: [
          { kind: 'cap', material: 'uPVC', outside: 125, wall: 4.8, length: 0.12 },
          { ...pipe, kind: 'sump', length: 1.5, centralisers: [0.75] },
          { ...pipe, ...slots, kind: 'screen', count: screens, centralisers: [1.43] },
          { ...pipe, kind: 'plain', count: Math.max(1, joints - screens - 1) },
        ],
        set: { by: 'bottom', depth },
        measuredDepth: depth,
      },
    ],
    annulus: [
      { from: 0, to: sealTop, fill: 'cementGrout', sanitary: true, sacks: 2, sackMass: 50 },
      { from: sealTop, to: packTop, fill: 'claySeal', sacks: 2, sackMass: 25 },
      { from: packTop, to: depth, fill: 'gravelPack', grainMin: 1, grainMax: 2, sacks: 12 },
    ],
    headworks: {
      ...{ padLength: 2, padWidth: 2, padThickness: 0.15, casingAboveGround: 0.5 },
      ...{ drainLength: 6, drainSlope: 2, plate: true, soakaway: 'Stone-filled pit' },
    },
  };
}

const minutes = [1, 2, 3, 5, 7, 10, 15, 20, 30, 40, 60, 90, 120, 180, 240, 360];

/** Drawdown that grows with the logarithm of time, as Cooper and Jacob have it. */
function reading(rest: number, rate: number, minute: number): number {
  return rounded(rest + rate * (0.6 + 0.25 * Math.log10(minute)), 2);
}

const parameters: readonly (readonly [string, number, string])[] = [
  ['pH', 6.8, ''],
  ['Electrical conductivity', 320, 'µS/cm'],
  ['Turbidity', 2, 'NTU'],
  ['Nitrate', 8, 'mg/l'],
  ['Fluoride', 0.4, 'mg/l'],
  ['Arsenic', 0.003, 'mg/l'],
  ['Iron', 0.3, 'mg/l'],
  ['Manganese', 0.08, 'mg/l'],
  ['Chloride', 22, 'mg/l'],
];

/** Levels, a pumping test and a sample of a well that gives water. */
export function madeWater(depth: number, day: string, random: Random): object {
  const rest = rounded(depth * (0.2 + 0.3 * random()), 2);
  const rate = rounded(drawnFrom(yields, random), 1);
  return {
    levels: [{ at: `${day}T07:00+00:00`, reading: rest, datum: 'ground', state: 'static' }],
    strikes: [{ depth: rounded(rest + 0.3 * (depth - rest), 1), rise: rest, flow: rate }],
    development: [
      { startedAt: `${day}T07:00+00:00`, endedAt: `${day}T15:00+00:00`, method: 'airLift' },
    ],
    tests: [
      {
        ...{ kind: 'constantRate', startedAt: `${day}T08:00+00:00`, datum: 'ground' },
        ...{ restLevel: rest, rate, minutesPumped: 360, pumpIntake: rounded(depth - 4, 1) },
        series: minutes.map((minute) => ({
          minutes: minute,
          reading: reading(rest, rate, minute),
        })),
      },
    ],
    quality: [
      {
        takenAt: `${day}T14:00+00:00`,
        results: parameters.map(([parameter, middle, unit]) => ({
          parameter,
          value: rounded(middle * (0.5 + random()), 3),
          ...(unit === '' ? {} : { unit }),
        })),
      },
    ],
  };
}
