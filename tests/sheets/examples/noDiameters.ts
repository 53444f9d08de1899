import type { WellRecord } from '../../../core/record/schema.ts';

/** A cased well of which nobody wrote a diameter: hole and pipes dashed, no scale across. */
export function noDiameters(): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'E-03', name: 'No diameters', state: 'completed' },
    bore: { depthReached: 40 },
    log: [
      { from: 0, to: 11, material: 'laterite', boundary: 'gradual' },
      { from: 11, to: 40, material: 'schist', weathering: 'highly', boundary: 'uncertain' },
    ],
    strings: [
      {
        components: [
          { kind: 'cap', length: 0.1 },
          { kind: 'screen', length: 6 },
          { kind: 'plain', length: 34.4 },
        ],
        set: { by: 'bottom', depth: 40 },
      },
    ],
    annulus: [
      { from: 0, to: 6, fill: 'cementGrout' },
      { from: 20, to: 40, fill: 'gravelPack' },
    ],
    levels: [{ reading: 12.2, datum: 'casingTop', state: 'static' }],
    pump: { kind: 'deepwellLever', intake: 30 },
  };
}
