import type { Step } from './step.ts';

/** Practices of the user, each as the JSON text of its file. */
export const practices: Step = {
  number: 60,
  name: 'practices',
  sql: `
    CREATE TABLE practice (
      id TEXT PRIMARY KEY,
      json TEXT NOT NULL,
      changed_at TEXT NOT NULL
    ) STRICT;
  `,
};
