import type { WellRecord } from '../../../core/record/schema.ts';

/** Water stands 2.40 m above ground in a casing raised to 3 m: the axis begins above ground. */
export function artesian(): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'E-07', name: 'Flowing well', state: 'completed' },
    bore: { sections: [{ from: 0, to: 60, diameter: 200 }], depthReached: 60 },
    log: [
      { from: 0, to: 45, material: 'mudstone' },
      { from: 45, to: 60, material: 'sandstone', moisture: 'waterBearing' },
    ],
    strings: [
      {
        components: [
          { kind: 'screen', outside: 114.3, wall: 4.5, length: 12, slotWidth: 1 },
          { kind: 'plain', outside: 114.3, wall: 4.5, length: 51 },
        ],
        set: { by: 'stickUp', height: 3 },
      },
    ],
    annulus: [
      { from: 0, to: 44, fill: 'cementGrout', sanitary: true },
      { from: 44, to: 60, fill: 'gravelPack' },
    ],
    headworks: { padLength: 2, padWidth: 2, padThickness: 0.15 },
    strikes: [{ depth: 46, rise: -2.4 }],
    levels: [{ reading: -2.4, datum: 'ground', state: 'static' }],
  };
}
