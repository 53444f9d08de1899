import type { WellRecord } from '../../../core/record/schema.ts';

/** A hundred short pipes, each of its own length: a tally longer than a page. */
export function hundredPipes(): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'E-11', name: 'A hundred pipes', state: 'completed' },
    bore: { sections: [{ from: 0, to: 151, diameter: 200 }], depthReached: 151 },
    log: [{ from: 0, to: 151, material: 'siltstone' }],
    strings: [
      {
        components: Array.from({ length: 100 }, (_, at) => ({
          kind: at < 10 ? ('screen' as const) : ('plain' as const),
          outside: 125,
          wall: 4.8,
          material: at % 2 === 0 ? 'uPVC' : 'steel',
          length: 1.5 + (at % 5) / 100,
        })),
        set: { by: 'bottom', depth: 150 },
      },
    ],
    annulus: [{ from: 0, to: 151, fill: 'gravelPack' }],
  };
}
