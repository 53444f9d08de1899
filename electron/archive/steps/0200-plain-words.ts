import type { Step } from './step.ts';

/**
 * Words to find wells by, each once a well and written plainly, so that the index holds no places
 * of words and the beginnings of one, two and three letters are as quick as a word. `worded_by`
 * tells by which way of reading records a well's words were written; 0 means that they are to be
 * written anew. One index holds all that lists are filtered by, so that wells which fit several
 * conditions are counted in it alone.
 */
export const plainWords: Step = {
  number: 200,
  name: 'plain words',
  sql: `
    ALTER TABLE well ADD COLUMN worded_by INTEGER NOT NULL DEFAULT 0;
    CREATE INDEX well_by_wording ON well (worded_by);

    DROP TABLE well_search;
    CREATE VIRTUAL TABLE well_search USING fts5 (
      words, content = '', contentless_delete = 1, detail = none,
      tokenize = 'ascii', prefix = '1 2 3'
    );

    CREATE INDEX well_filtered ON well (
      state, region, district, method, pump, client, contractor,
      year, depth_m, yield_m3h, counted, errors, warnings, latitude
    ) WHERE binned_at IS NULL;
  `,
};
