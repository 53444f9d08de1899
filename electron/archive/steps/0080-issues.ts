import type { Step } from './step.ts';

/**
 * Papers as they were issued, byte for byte, each of one revision; and what each later signature
 * added to its end. None is ever changed.
 */
export const issues: Step = {
  number: 80,
  name: 'issues',
  sql: `
    CREATE TABLE issue (
      well_id TEXT NOT NULL,
      number INTEGER NOT NULL,
      revision INTEGER NOT NULL,
      paper TEXT NOT NULL,
      languages TEXT NOT NULL,
      file_name TEXT NOT NULL,
      record_hash TEXT NOT NULL,
      issued_at TEXT NOT NULL,
      free_marks TEXT NOT NULL,
      pdf BLOB NOT NULL,
      PRIMARY KEY (well_id, number)
    ) STRICT;
    CREATE INDEX issue_by_record ON issue (record_hash);
    CREATE TRIGGER issue_is_written_once BEFORE UPDATE ON issue
    BEGIN
      SELECT RAISE(ABORT, 'an issued paper is never overwritten');
    END;

    CREATE TABLE issue_seal (
      well_id TEXT NOT NULL,
      number INTEGER NOT NULL,
      seal INTEGER NOT NULL,
      sealed_at TEXT NOT NULL,
      added BLOB NOT NULL,
      PRIMARY KEY (well_id, number, seal),
      FOREIGN KEY (well_id, number) REFERENCES issue (well_id, number)
    ) STRICT;
    CREATE TRIGGER issue_seal_is_written_once BEFORE UPDATE ON issue_seal
    BEGIN
      SELECT RAISE(ABORT, 'a signature is never overwritten');
    END;
  `,
};
