/** The columns of log and section, from the left. */
export const columnNames = [
  'depth',
  'strikes',
  'samples',
  'ground',
  'grain',
  'description',
  'colour',
  'moisture',
  'sieve',
  'rate',
  'casing',
  'section',
  'fill',
] as const;

export type ColumnName = (typeof columnNames)[number];

/** Those that a person switches on and off; ruler, ground and section stand on every sheet. */
export const switchedColumns = [
  'strikes',
  'samples',
  'grain',
  'description',
  'colour',
  'moisture',
  'sieve',
  'rate',
] as const satisfies readonly ColumnName[];

export type SwitchedColumn = (typeof switchedColumns)[number];
