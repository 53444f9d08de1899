import type { Metres } from '../base/units.ts';
import type { HandWindow, LeftOut, Minutes, RateChange, TestReading } from './results.ts';

/** Where a test was read, as far as it matters to methods. */
export interface Setting {
  /** Distance from the pumped well; absent where the readings are from the pumped well itself. */
  readonly distanceM?: Metres;
  /** Radius of the hole at the screen; of the pumped well alone. */
  readonly holeRadiusM?: Metres;
  /** Inside radius of the casing where the water stands; of the pumped well alone. */
  readonly casingRadiusM?: Metres;
  /** Straight part that a person chose. */
  readonly window?: HandWindow;
}

/** Readings with the rates that made them, ready for methods. */
export interface Drawdowns {
  /** In order of time. */
  readonly readings: readonly TestReading[];
  readonly leftOut: readonly LeftOut[];
  readonly rates: readonly RateChange[];
  /** Of a recovery: minutes from the start of pumping to its stop. */
  readonly pumpedMin?: Minutes;
}
