import type { Step } from './step.ts';

/** Templates of an organisation, each as the JSON text of its file with its logos within. */
export const templates: Step = {
  number: 190,
  name: 'templates',
  sql: `
    CREATE TABLE template (
      name TEXT PRIMARY KEY,
      usual INTEGER NOT NULL CHECK (usual IN (0, 1)),
      json TEXT NOT NULL,
      changed_at TEXT NOT NULL
    ) STRICT;
    CREATE UNIQUE INDEX template_usual ON template (usual) WHERE usual = 1;
  `,
};
