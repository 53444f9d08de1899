import type { Step } from './step.ts';

/** Finds wells by their number alone, as merging does for each well of another archive. */
export const numbers: Step = {
  number: 110,
  name: 'numbers',
  sql: 'CREATE INDEX well_by_number ON well (number);',
};
