import { seededRandom } from '../../../core/base/random.ts';
import { wellStates } from '../../../core/record/identity.ts';
import type { FindingCount } from '../../../electron/archive/lists.ts';
import type { Archive } from '../../../electron/archive/archive.ts';
import { valueOf } from './sample.ts';

/** A small record of an invented well. */
export function wellLike(number: string, parts: object = {}) {
  return { schemaVersion: 1, identity: { number }, ...parts };
}

/** Counts what a record says of itself, so that tests of the archive need no model. */
export const saidCount: FindingCount = {
  number: 7,
  count: (document) => {
    const { said = {} } = document as { said?: object };
    return { errors: 0, warnings: 0, notes: 0, ...said };
  },
};

/** Goes through all wells, as a page has it done. */
export function goThroughAll({ lists }: Archive): void {
  while (valueOf(lists.uncounted(saidCount.number)) > 0) valueOf(lists.goThrough(saidCount, 1000));
}

/** Records of invented wells: the same for the same count. */
export function generatedWells(count: number): object[] {
  const random = seededRandom(count);
  const pick = (below: number) => Math.floor(random() * below);
  return Array.from({ length: count }, (_, at) => ({
    schemaVersion: 1,
    identity: { number: `KV-${20 + pick(7)}-${at}`, state: wellStates[pick(wellStates.length)] },
    site: {
      district: `District ${pick(40)}`,
      village: `Village ${pick(900)}`,
      latitude: 1 + random(),
      longitude: -7 + random(),
    },
    bore: { finishedOn: `20${20 + pick(7)}-03-01`, depthReached: 5 + pick(90) },
    said: { errors: pick(3), warnings: pick(4) },
  }));
}
