import type { Step } from './step.ts';

/** Sets of guideline values of the user, each as the JSON text of its file. */
export const guidelines: Step = {
  number: 70,
  name: 'guidelines',
  sql: `
    CREATE TABLE guidelines (
      id TEXT PRIMARY KEY,
      json TEXT NOT NULL,
      changed_at TEXT NOT NULL
    ) STRICT;
  `,
};
