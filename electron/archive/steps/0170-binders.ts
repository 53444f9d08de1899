import type { Step } from './step.ts';

/** Binders that are made again and again, each as the JSON text of what it shall hold. */
export const binders: Step = {
  number: 170,
  name: 'binders',
  sql: `
    CREATE TABLE binder (
      name TEXT PRIMARY KEY,
      json TEXT NOT NULL,
      changed_at TEXT NOT NULL
    ) STRICT;
  `,
};
