import type { Step } from './step.ts';

/**
 * Wells with the columns that lists are made of, and every revision of their records. A revision
 * is written once: the trigger stops an update by anything that speaks SQL to the file.
 */
export const wells: Step = {
  number: 10,
  name: 'wells',
  sql: `
    CREATE TABLE well (
      seq INTEGER PRIMARY KEY,
      id TEXT NOT NULL UNIQUE,
      number TEXT NOT NULL,
      name TEXT NOT NULL,
      district TEXT NOT NULL,
      village TEXT NOT NULL,
      state TEXT NOT NULL,
      depth_m REAL,
      revision INTEGER NOT NULL,
      changed_at TEXT NOT NULL
    ) STRICT;
    CREATE INDEX well_by_place ON well (district, number);

    CREATE TABLE revision (
      well_id TEXT NOT NULL REFERENCES well (id),
      number INTEGER NOT NULL,
      record TEXT NOT NULL,
      changed_at TEXT NOT NULL,
      hash TEXT NOT NULL,
      PRIMARY KEY (well_id, number)
    ) STRICT;
    CREATE TRIGGER revision_is_written_once BEFORE UPDATE ON revision
    BEGIN
      SELECT RAISE(ABORT, 'a revision is never overwritten');
    END;
  `,
};
