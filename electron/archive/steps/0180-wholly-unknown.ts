import type { Step } from './step.ts';

/** Puts wells that were not gone through in the order of their numbers, however many they are. */
export const whollyUnknown: Step = {
  number: 180,
  name: 'wholly unknown',
  sql: `
    CREATE INDEX well_unfound ON well (number_key) WHERE binned_at IS NULL AND counted = 0;
  `,
};
