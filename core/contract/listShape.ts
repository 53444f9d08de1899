import type { DrillingMethod } from '../record/bore.ts';
import type { PumpKind } from '../record/headworks.ts';
import type { WellState } from '../record/identity.ts';
import type { ListOrder, OrderBy, WellFilter, WorstFinding } from '../record/wellFilter.ts';
import type { WellRow } from './wellRow.ts';

export type { ListOrder, OrderBy, WellFilter, WorstFinding };

/** Where words that were looked for stand, if no column of the list shows them. */
export interface Match {
  readonly where: 'number' | 'places' | 'people' | 'remarks' | 'log';
  /** The line about the first of them, cut to a few words. */
  readonly text: string;
}

/** How many findings of each weight. */
export interface FindingCounts {
  readonly errors: number;
  readonly warnings: number;
  readonly notes: number;
}

export interface ListRow extends WellRow {
  readonly region: string;
  readonly year?: number;
  /** Absent while the well was not gone through since it was changed. */
  readonly findings?: FindingCounts;
  readonly match?: Match;
}

export interface FoundWells {
  /** From the row asked for on, as many as were asked for or are there. */
  readonly rows: readonly ListRow[];
  /** How many fit in all. */
  readonly total: number;
  /** Wells of the archive that `list.goThrough` still has to go through. */
  readonly uncounted: number;
}

/** A well on a map. */
export interface MapWell {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly village: string;
  readonly state: WellState | '';
  /** WGS 84, degrees. */
  readonly latitude: number;
  readonly longitude: number;
}

export interface MappedWells {
  readonly wells: readonly MapWell[];
  /** Wells that fit but have no position. */
  readonly withoutPosition: number;
  /** Wells with a position that are too many for one map and were left out. */
  readonly leftOut: number;
}

/** A well by what people call it. */
export type NamedWell = Pick<WellRow, 'id' | 'number' | 'name' | 'village'>;

/** A value of a filter and how many wells have it. */
export interface Choice<T extends string = string> {
  readonly value: T;
  readonly wells: number;
}

/** What there is to filter by. */
export interface ListChoices {
  readonly regions: readonly Choice[];
  readonly districts: readonly Choice[];
  readonly states: readonly Choice<WellState | ''>[];
  readonly methods: readonly Choice<DrillingMethod | ''>[];
  /** Kinds of pump. */
  readonly pumps: readonly Choice<PumpKind | ''>[];
  readonly clients: readonly Choice[];
  readonly contractors: readonly Choice[];
  /** First and last year; absent where no well has one. */
  readonly years?: readonly [first: number, last: number];
}

/** Most rows of one answer. */
export const mostRows = 500;
/** Most wells of one map. */
export const mostMapped = 5000;

export interface ListCalls {
  'list.find': {
    takes: { filter: WellFilter; order?: ListOrder; from?: number; limit?: number };
    gives: FoundWells;
  };
  /** Which row a well stands in, from 0; absent where it does not fit. */
  'list.rank': {
    takes: { filter: WellFilter; order?: ListOrder; id: string };
    gives: { at?: number };
  };
  /** Wells outside the bin by their ids, in no order; one that is not there is left out. */
  'list.named': { takes: { ids: readonly string[] }; gives: readonly NamedWell[] };
  'list.map': { takes: { filter: WellFilter }; gives: MappedWells };
  'list.choices': { takes: Record<string, never>; gives: ListChoices };
  /** Goes through some wells that changed or are old; called until nothing is left. */
  'list.goThrough': { takes: Record<string, never>; gives: { left: number } };
}
