import type { WellRecord } from '../../../core/record/schema.ts';

/** Two strikes whose water rose above the ground, higher than anything else of the well. */
export function risingStrikes(): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'E-09', name: 'Rising strikes', state: 'drilled' },
    bore: { sections: [{ from: 0, to: 30, diameter: 165 }], depthReached: 30 },
    log: [
      { from: 0, to: 14, material: 'clay' },
      { from: 14, to: 30, material: 'limestone', fractured: true },
    ],
    strikes: [
      { depth: 15, rise: -0.6 },
      { depth: 15.4, rise: -1.8 },
    ],
  };
}
