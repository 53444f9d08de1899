import type { Step } from './step.ts';

/**
 * Files that records name by their SHA-256: each is kept once, byte for byte as it was given,
 * with a downsized copy for print beside it. No file goes while any revision may name it.
 */
export const attachments: Step = {
  number: 50,
  name: 'attachments',
  sql: `
    CREATE TABLE attachment (
      hash TEXT PRIMARY KEY,
      media_type TEXT NOT NULL,
      size INTEGER NOT NULL,
      bytes BLOB NOT NULL,
      added_at TEXT NOT NULL
    ) STRICT;
    CREATE TRIGGER attachment_is_written_once BEFORE UPDATE ON attachment
    BEGIN
      SELECT RAISE(ABORT, 'an attachment is never overwritten');
    END;

    CREATE TABLE print_copy (
      hash TEXT PRIMARY KEY REFERENCES attachment (hash),
      media_type TEXT NOT NULL,
      width INTEGER NOT NULL,
      height INTEGER NOT NULL,
      bytes BLOB NOT NULL
    ) STRICT;
  `,
};
