import type { WellRecord } from '../../../core/record/schema.ts';

/** A 3 m well, dug wide to 1.6 m and drilled on: the dug part is cut, the scale is the largest. */
export function dugAndDrilled(): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'E-01', name: 'Three metres', state: 'completed' },
    bore: {
      method: 'handDug',
      sections: [
        { from: 0, to: 1.6, diameter: 1300 },
        { from: 1.6, to: 3, diameter: 130 },
      ],
      depthReached: 3,
    },
    log: [
      { from: 0, to: 1.6, material: 'clay', qualifiers: [{ material: 'sand' }] },
      { from: 1.6, to: 3, material: 'sand', grain: 'medium', moisture: 'waterBearing' },
    ],
    strings: [
      {
        components: [
          { kind: 'cap', outside: 75, length: 0.05 },
          { kind: 'screen', outside: 75, wall: 3.6, length: 1, slotWidth: 0.5 },
          { kind: 'plain', outside: 75, wall: 3.6, length: 2.45 },
        ],
        set: { by: 'bottom', depth: 3 },
      },
    ],
    annulus: [
      { from: 0, to: 1.5, fill: 'backfill' },
      { from: 1.5, to: 3, fill: 'gravelPack', grainMin: 1, grainMax: 2 },
    ],
    levels: [{ reading: 1.4, datum: 'ground', state: 'static' }],
    pump: { kind: 'bucketAndWindlass', intake: 2.8, bodyDiameter: 60 },
  };
}
