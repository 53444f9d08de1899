import { fillKinds } from '../../../core/record/annulus.ts';
import type { WellRecord } from '../../../core/record/schema.ts';

/** Forty fills of one metre each: more words than stand beside the section. */
export function fortyFills(): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'E-06', name: 'Forty fills', state: 'completed' },
    bore: { sections: [{ from: 0, to: 40, diameter: 220 }], depthReached: 40 },
    log: [{ from: 0, to: 40, material: 'sand' }],
    strings: [
      {
        components: [
          { kind: 'cap', outside: 125, length: 0.1 },
          { kind: 'screen', outside: 125, wall: 4.8, length: 9, slotWidth: 0.75 },
          { kind: 'plain', outside: 125, wall: 4.8, length: 31.5 },
        ],
        set: { by: 'bottom', depth: 40 },
      },
    ],
    annulus: Array.from({ length: 40 }, (_, at) => ({
      from: at,
      to: at + 1,
      fill: fillKinds[at % fillKinds.length]!,
      grainMin: 1,
      grainMax: 3,
      litres: 26,
    })),
  };
}
