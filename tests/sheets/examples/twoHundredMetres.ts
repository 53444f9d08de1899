import type { WellRecord } from '../../../core/record/schema.ts';

const materials = ['clay', 'sandstone', 'shale', 'siltstone', 'granite'] as const;

/** A 200 m well with an interval every 4 m and pipes of 5.80 m: several pages, match lines. */
export function twoHundredMetres(): WellRecord {
  const pipe = { outside: 168, wall: 7.1, length: 5.8, material: 'steel' };
  return {
    schemaVersion: 1,
    identity: { number: 'E-02', name: 'Two hundred metres', state: 'completed' },
    bore: {
      method: 'airRotary',
      sections: [
        { from: 0, to: 24, diameter: 311 },
        { from: 24, to: 200, diameter: 254 },
      ],
      depthReached: 200,
    },
    log: Array.from({ length: 50 }, (_, at) => ({
      from: at * 4,
      to: at * 4 + 4,
      material: materials[at % materials.length]!,
      colour: 'grey',
      minutesPerMetre: 4 + (at % 7) * 3,
      sampled: at % 2 === 0,
    })),
    strings: [
      {
        components: [
          { kind: 'cap', outside: 168, length: 0.2 },
          { kind: 'screen', ...pipe, count: 6, slotWidth: 1, openArea: 8 },
          { kind: 'plain', ...pipe, count: 28, centralisers: [2.9] },
        ],
        set: { by: 'stickUp', height: 0.5 },
      },
    ],
    annulus: [
      { from: 0, to: 20, fill: 'cementGrout', sanitary: true, litres: 900 },
      { from: 20, to: 150, fill: 'backfill' },
      { from: 150, to: 200, fill: 'gravelPack', grainMin: 2, grainMax: 4, sacks: 40, sackMass: 50 },
    ],
    strikes: [
      { depth: 92, rise: 31 },
      { depth: 171, rise: 24.5 },
    ],
    levels: [
      { at: '2026-01-12T07:10:00+01:00', reading: 24.6, datum: 'ground', state: 'static' },
      { reading: 61.35, datum: 'ground', state: 'pumping', rate: 7.2, minutesPumped: 1440 },
    ],
    pump: { kind: 'electricSubmersible', intake: 120, cylinderTop: 118.4, bodyDiameter: 98 },
  };
}
