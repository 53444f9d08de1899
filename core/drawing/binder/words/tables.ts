/** Words of the tables; heads are as short as their columns are narrow. */
export interface TableWords {
  readonly byDistrict: string;
  readonly depths: string;
  readonly yields: string;
  readonly heads: Readonly<
    Record<
      | 'number'
      | 'village'
      | 'district'
      | 'year'
      | 'state'
      | 'drilled'
      | 'cased'
      | 'screens'
      | 'rest'
      | 'aquifer'
      | 'yield'
      | 'perMetre'
      | 'pump'
      | 'intake'
      | 'page'
      | 'wells'
      | 'water'
      | 'dry'
      | 'open'
      | 'metres',
      string
    >
  >;
  /** Of `{n}` wells of which a value is known. */
  readonly median: string;
  readonly all: string;
  readonly medianSays: string;
  readonly marks: string;
  /** Of wells that are laid out and not built. */
  readonly planned: string;
  readonly outcomes: string;
}
