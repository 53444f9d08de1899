import type { Step } from './step.ts';

/** Who made a revision, and why; empty where nobody said. */
export const reasons: Step = {
  number: 100,
  name: 'reasons',
  sql: `
    ALTER TABLE revision ADD COLUMN author TEXT NOT NULL DEFAULT '';
    ALTER TABLE revision ADD COLUMN reason TEXT NOT NULL DEFAULT '';
  `,
};
