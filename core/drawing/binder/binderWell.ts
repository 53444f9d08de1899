import type { LonLat } from '../../base/geo/shapes.ts';
import type { DepthM, Metres } from '../../base/units.ts';
import type { InLanguages } from '../../practice/practice.ts';
import type { DrillingMethod } from '../../record/bore.ts';
import type { PumpKind } from '../../record/headworks.ts';
import type { WellState } from '../../record/identity.ts';
import type { Material } from '../../record/materials.ts';
import type { Basis } from '../../water/guidelines/guidelineSet.ts';
import type { ValueState } from '../../water/results.ts';

/**
 * What the binder's own pages tell of a well: plain JSON, reckoned once from its record, so that
 * pages of a thousand wells need none of their records. Absent means not known; a text that nobody
 * wrote is empty.
 */
export interface BinderWell {
  /** Id in the archive. */
  readonly id: string;
  readonly number: string;
  readonly name: string;
  readonly region: string;
  readonly district: string;
  readonly village: string;
  readonly programme: string;
  readonly state: WellState | '';
  /** Whether drilling found water: `open` where the state does not tell. */
  readonly outcome: Outcome;
  /** Year of the last day of drilling, else of the first. */
  readonly year?: number;
  /** `yyyy-mm-dd`, as far as they were written. */
  readonly startedOn?: string;
  readonly finishedOn?: string;
  readonly method?: DrillingMethod;
  /** WGS 84, degrees. */
  readonly position?: LonLat;
  /** Ground level above its datum. */
  readonly elevationM?: Metres;
  readonly elevationDatum?: string;
  /** Deepest point of the hole. */
  readonly drilledM?: DepthM;
  /** Foot of the deepest string. */
  readonly casedM?: DepthM;
  /** The latest level read at rest. */
  readonly restM?: DepthM;
  readonly restAt?: string;
  readonly yield?: BinderYield;
  /** Q/s at the end of the last test that water was pumped in; m³/h for a metre of drawdown. */
  readonly specificCapacity?: number;
  readonly pump?: { readonly kind?: PumpKind; readonly intakeM?: DepthM };
  /** From the top down, where screens that follow each other are one. */
  readonly screens: readonly BinderRange[];
  readonly layers: readonly BinderLayer[];
  /** Material along the greater part of the screens. */
  readonly aquifer?: Material;
  /** Material of the greater part of the log. */
  readonly geology?: Material;
  readonly quality?: BinderQuality;
  /** Practice that the well was judged by. */
  readonly practice: { readonly id: string; readonly version: string; readonly name: InLanguages };
  /** Revision of the record, from 1; absent where there is none yet. */
  readonly revision?: number;
  /** ISO 8601 moment of the last change. */
  readonly changedAt: string;
}

export type Outcome = 'water' | 'dry' | 'open';

/** How a yield is known: safe rate of the tests, rate of the last test, or of the pump in use. */
export type YieldBasis = 'safe' | 'tested' | 'pump';

export interface BinderYield {
  readonly m3h: number;
  readonly basis: YieldBasis;
}

export interface BinderRange {
  readonly fromM: DepthM;
  readonly toM: DepthM;
}

export interface BinderLayer extends BinderRange {
  readonly material?: Material;
  /** Key of its hatch; absent where no material was logged. */
  readonly hatch?: string;
}

/** The last result of each parameter that was looked for, beside the values of one set. */
export interface BinderQuality {
  readonly set: { readonly id: string; readonly version: string; readonly name: InLanguages };
  readonly samples: number;
  /** In the order of the set. */
  readonly results: readonly BinderResult[];
}

export interface BinderResult {
  readonly parameter: string;
  readonly name: InLanguages;
  readonly unit: string;
  readonly as?: string;
  /** In that unit and form; absent where it could not be told. */
  readonly value?: number;
  /** Below the detection limit that stands as value. */
  readonly below: boolean;
  readonly limits: readonly BinderLimit[];
}

/** A guideline value in the unit of its result, and how the result stands to it. */
export interface BinderLimit {
  readonly key: string;
  readonly bound: 'most' | 'least';
  readonly basis: Basis;
  /** Absent where it cannot be brought to the result's unit. */
  readonly value?: number;
  readonly state: ValueState;
}
