import type { WellRecord } from '../../../core/record/schema.ts';

const pipe = { outside: 125, wall: 4.8, material: 'uPVC' } as const;

/** A well through one thick clay with one backfill: its axis can be broken. */
export function longPlain(): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'KV-9' },
    bore: {
      sections: [
        { from: 0, to: 6, diameter: 250 },
        { from: 6, to: 64, diameter: 200 },
      ],
      depthReached: 64,
    },
    log: [
      { from: 0, to: 1, material: 'topsoil' },
      { from: 1, to: 5, material: 'laterite', boundary: 'gradual' },
      { from: 5, to: 46, material: 'clay', minutesPerMetre: 6 },
      { from: 46, to: 60, material: 'sand', minutesPerMetre: 3 },
      { from: 60, to: 64, material: 'clay', minutesPerMetre: 8 },
    ],
    strings: [
      {
        components: [
          { kind: 'cap', outside: 125 },
          { kind: 'sump', ...pipe, length: 1.5 },
          { kind: 'screen', ...pipe, count: 4, length: 3, slotWidth: 0.75 },
          { kind: 'plain', ...pipe, count: 16, length: 3 },
        ],
        set: { by: 'bottom', depth: 61 },
      },
    ],
    annulus: [
      { from: 0, to: 6, fill: 'cementGrout' },
      { from: 6, to: 41, fill: 'backfill' },
      { from: 41, to: 43, fill: 'claySeal' },
      { from: 43, to: 62, fill: 'gravelPack' },
    ],
    levels: [
      { reading: 9.5, datum: 'ground', state: 'static' },
      { reading: 14.2, datum: 'ground', state: 'pumping', rate: 2 },
    ],
    strikes: [{ depth: 46.5, rise: 9.5 }],
    pump: { kind: 'deepwellLever', intake: 40 },
  };
}
