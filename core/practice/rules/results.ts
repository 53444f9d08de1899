import type { RecordPath } from '../../base/recordPath.ts';
import type { Metres, Millimetres } from '../../base/units.ts';
import type { Missing } from './missing.ts';

/** The last reading of a parameter that stands past a health-based value, both in one unit. */
export interface HealthReading {
  readonly path: RecordPath;
  /** Id of the parameter in its set of guideline values. */
  readonly parameter: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
}

/** How a kind of pump stands to one limit: what rules it out, or what lacks to say so. */
export interface PumpLimit<V> {
  readonly against?: V;
  readonly missing: readonly Missing[];
}

/** The kind of pump that the record names, by each of its limits that was looked at. */
export interface PumpResults {
  readonly lift?: PumpLimit<{ readonly liftM: Metres; readonly mostM: Metres }>;
  readonly casing?: PumpLimit<{ readonly insideMm: Millimetres; readonly leastMm: Millimetres }>;
  /** Hours a day that it would have to run for what the users need. */
  readonly flow?: PumpLimit<{ readonly hours: number }>;
}

/**
 * What was found beside the rules about a well's water and its pump. Rules take it as it is handed
 * in; those that need it do not apply without it.
 */
export interface WaterResults {
  readonly aboveHealth: readonly HealthReading[];
  /** Readings that cannot be set beside a health-based value. */
  readonly unclear: readonly RecordPath[];
  /** Asked for before handover, and nobody looked; where it belongs. */
  readonly missingTests: readonly { readonly parameter: string; readonly path: RecordPath }[];
  /** Absent where the record names no kind that is known. */
  readonly pump?: PumpResults;
}
