import type { Step } from './step.ts';

/**
 * Words to find wells by; rowid is the well's seq. Holds the index alone, not the text. Accents
 * are dropped on both sides, so that either spelling finds the other.
 */
export const search: Step = {
  number: 20,
  name: 'search',
  sql: `
    CREATE VIRTUAL TABLE well_search USING fts5 (
      number, name, places, people, remarks,
      content = '', contentless_delete = 1,
      tokenize = "unicode61 remove_diacritics 2", prefix = '2 3'
    );
  `,
};
