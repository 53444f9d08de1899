import type { Step } from './step.ts';

/**
 * What long lists are filtered by besides, and an index for each order that a list comes in, so
 * that a page of it costs what the page holds. Orders leave out what is not known: that comes by a
 * second question. `yield_m3h` is in cubic metres an hour; a state's rank is its place among the
 * states, null where none was written.
 */
export const longLists: Step = {
  number: 160,
  name: 'long lists',
  sql: `
    ALTER TABLE well ADD COLUMN state_rank INTEGER;
    ALTER TABLE well ADD COLUMN yield_m3h REAL;
    ALTER TABLE well ADD COLUMN method TEXT NOT NULL DEFAULT '';
    ALTER TABLE well ADD COLUMN pump TEXT NOT NULL DEFAULT '';
    ALTER TABLE well ADD COLUMN client TEXT NOT NULL DEFAULT '';
    ALTER TABLE well ADD COLUMN contractor TEXT NOT NULL DEFAULT '';
    UPDATE well SET listed_by = 0;

    DROP INDEX well_by_place;
    CREATE INDEX well_number ON well (number_key, number) WHERE binned_at IS NULL;
    CREATE INDEX well_name ON well (name_key, number_key) WHERE binned_at IS NULL;
    CREATE INDEX well_village ON well (village_key, number_key) WHERE binned_at IS NULL;
    CREATE INDEX well_district ON well (district_key, number_key) WHERE binned_at IS NULL;
    CREATE INDEX well_state ON well (state_rank, number_key) WHERE binned_at IS NULL;
    CREATE INDEX well_year ON well (year, number_key) WHERE binned_at IS NULL;
    CREATE INDEX well_depth ON well (depth_m, number_key) WHERE binned_at IS NULL;
    CREATE INDEX well_findings ON well (errors, warnings, notes, number_key)
      WHERE binned_at IS NULL AND counted <> 0;
    CREATE INDEX well_changed ON well (changed_at, number_key) WHERE binned_at IS NULL;

    CREATE INDEX well_in_district ON well (district, number) WHERE binned_at IS NULL;
    CREATE INDEX well_in_region ON well (region) WHERE binned_at IS NULL;
    CREATE INDEX well_of_state ON well (state) WHERE binned_at IS NULL;
    CREATE INDEX well_yield ON well (yield_m3h) WHERE binned_at IS NULL;
    CREATE INDEX well_method ON well (method) WHERE binned_at IS NULL;
    CREATE INDEX well_pump ON well (pump) WHERE binned_at IS NULL;
    CREATE INDEX well_client ON well (client) WHERE binned_at IS NULL;
    CREATE INDEX well_contractor ON well (contractor) WHERE binned_at IS NULL;
    CREATE INDEX well_placed ON well (number_key) WHERE binned_at IS NULL AND latitude IS NOT NULL;
  `,
};
