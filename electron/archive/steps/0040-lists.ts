import type { Step } from './step.ts';

/**
 * What lists and maps sort and filter wells by, a bin, and backdrops of maps.
 *
 * `counted` tells by which count of the findings a well was gone through; 0 means not since it
 * was changed, whoever changed it. Keys are texts to sort by. A revision goes only together with
 * its well, out of the bin.
 */
export const lists: Step = {
  number: 40,
  name: 'lists',
  sql: `
    ALTER TABLE well ADD COLUMN region TEXT NOT NULL DEFAULT '';
    ALTER TABLE well ADD COLUMN year INTEGER;
    ALTER TABLE well ADD COLUMN latitude REAL;
    ALTER TABLE well ADD COLUMN longitude REAL;
    ALTER TABLE well ADD COLUMN number_key TEXT NOT NULL DEFAULT '';
    ALTER TABLE well ADD COLUMN name_key TEXT NOT NULL DEFAULT '';
    ALTER TABLE well ADD COLUMN village_key TEXT NOT NULL DEFAULT '';
    ALTER TABLE well ADD COLUMN district_key TEXT NOT NULL DEFAULT '';
    ALTER TABLE well ADD COLUMN errors INTEGER NOT NULL DEFAULT 0;
    ALTER TABLE well ADD COLUMN warnings INTEGER NOT NULL DEFAULT 0;
    ALTER TABLE well ADD COLUMN notes INTEGER NOT NULL DEFAULT 0;
    ALTER TABLE well ADD COLUMN counted INTEGER NOT NULL DEFAULT 0;
    ALTER TABLE well ADD COLUMN binned_at TEXT;
    CREATE INDEX well_by_count ON well (counted);
    CREATE INDEX well_in_bin ON well (binned_at) WHERE binned_at IS NOT NULL;
    CREATE TRIGGER well_is_to_be_counted AFTER UPDATE OF changed_at ON well
    BEGIN
      UPDATE well SET counted = 0 WHERE seq = new.seq;
    END;

    CREATE TRIGGER revision_goes_with_its_well BEFORE DELETE ON revision
    WHEN (SELECT binned_at FROM well WHERE id = old.well_id) IS NULL
    BEGIN
      SELECT RAISE(ABORT, 'a revision goes only with its well, out of the bin');
    END;

    CREATE TABLE backdrop (
      seq INTEGER PRIMARY KEY,
      id TEXT NOT NULL UNIQUE,
      name TEXT NOT NULL,
      shapes TEXT NOT NULL,
      added_at TEXT NOT NULL
    ) STRICT;
  `,
};
