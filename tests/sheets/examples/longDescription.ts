import type { WellRecord } from '../../../core/record/schema.ts';

const seen =
  'Fine to medium quartz sand in beds of a hand to two hands, each begun by a lag of rounded ' +
  'gravel and ended by a film of grey clay. ';

/** One interval with a description of more than 900 characters between two short ones. */
export function longDescription(): WellRecord {
  return {
    schemaVersion: 1,
    identity: { number: 'E-05', name: 'A long description' },
    bore: { sections: [{ from: 0, to: 12, diameter: 150 }], depthReached: 12 },
    log: [
      { from: 0, to: 1, material: 'topsoil', remarks: 'Roots' },
      { from: 1, to: 2, material: 'sand', words: seen.repeat(7).trim() },
      { from: 2, to: 12, material: 'clay', colour: 'grey', consistency: 'stiff' },
    ],
  };
}
