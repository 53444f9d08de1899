import type { WellRecord } from '../../../core/record/schema.ts';

const seen = 'Beds of sand and of silt in turn, each some centimetres thick, with roots and shells';

/** Sixty intervals with four lines of words each and no other chapter: the words are too many. */
export function wordyLog(): WellRecord {
  return {
    schemaVersion: 1,
    bore: { sections: [{ from: 0, to: 30, diameter: 150 }], depthReached: 30 },
    log: Array.from({ length: 60 }, (_, at) => ({
      from: at / 2,
      to: (at + 1) / 2,
      material: 'sand' as const,
      words: `${at + 1}. ${seen}. ${seen}.`,
    })),
  };
}
