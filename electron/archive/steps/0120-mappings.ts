import type { Step } from './step.ts';

/** Matchings of columns to fields that were given a name, each as the JSON text of its file. */
export const mappings: Step = {
  number: 120,
  name: 'mappings',
  sql: `
    CREATE TABLE mapping (
      name TEXT PRIMARY KEY,
      json TEXT NOT NULL,
      changed_at TEXT NOT NULL
    ) STRICT;
  `,
};
