import type { Step } from './step.ts';

/**
 * A working copy of a well beside its revisions, and the edits that led to it since it was last
 * opened. Desks and patches are JSON. `base` is the desk as it was opened, absent where nothing
 * was edited since; `edit` counts every edit of the well and only rises.
 */
export const working: Step = {
  number: 30,
  name: 'working',
  sql: `
    CREATE TABLE working (
      well_id TEXT PRIMARY KEY REFERENCES well (id),
      base TEXT,
      desk TEXT NOT NULL,
      edit INTEGER NOT NULL,
      unrevised INTEGER NOT NULL,
      changed_at TEXT NOT NULL
    ) STRICT;

    CREATE TABLE edit (
      well_id TEXT NOT NULL REFERENCES working (well_id),
      number INTEGER NOT NULL,
      kind TEXT NOT NULL,
      patch TEXT NOT NULL,
      made_at TEXT NOT NULL,
      PRIMARY KEY (well_id, number)
    ) STRICT, WITHOUT ROWID;
    CREATE TRIGGER edit_is_written_once BEFORE UPDATE ON edit
    BEGIN
      SELECT RAISE(ABORT, 'an edit is never overwritten');
    END;
  `,
};
