import type { Step } from './step.ts';

/**
 * Words of the log among those that wells are found by. `listed_by` tells by which way of reading
 * records a well's line and words were written; 0 means that they are to be written anew.
 */
export const logWords: Step = {
  number: 140,
  name: 'log words',
  sql: `
    ALTER TABLE well ADD COLUMN listed_by INTEGER NOT NULL DEFAULT 0;
    CREATE INDEX well_by_listing ON well (listed_by);

    DROP TABLE well_search;
    CREATE VIRTUAL TABLE well_search USING fts5 (
      number, name, places, people, remarks, log,
      content = '', contentless_delete = 1,
      tokenize = "unicode61 remove_diacritics 2", prefix = '2 3'
    );
  `,
};
