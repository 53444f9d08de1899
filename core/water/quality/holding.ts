import type { ParameterId } from '../guidelines/guidelineSet.ts';

/** How long a bottle may stand before it is analysed, hours from sampling. */
export interface Holding {
  readonly mostH: number;
  /** Good practice, where that is less. */
  readonly goodH?: number;
}

const day = 24;
const twoDays = { mostH: 2 * day };
const fourWeeks = { mostH: 28 * day };

/**
 * Longest waits (read in public laboratories' tables: 6 to 24 h for bacteria, 48 h for nitrate,
 * nitrite and turbidity, 14 days for alkalinity, 28 days for conductivity, ammonia, fluoride,
 * chloride and sulfate). Metals in acid keep for half a year, which no sample of a well waits.
 */
export const holdingTimes: Readonly<Record<ParameterId, Holding>> = {
  eColi: { goodH: 6, mostH: day },
  totalColiforms: { goodH: 6, mostH: day },
  enterococci: { goodH: 6, mostH: day },
  turbidity: { goodH: day, mostH: 2 * day },
  nitrate: twoDays,
  nitrite: twoDays,
  alkalinity: { goodH: day, mostH: 14 * day },
  bicarbonate: { goodH: day, mostH: 14 * day },
  conductivity: fourWeeks,
  ammonia: fourWeeks,
  fluoride: fourWeeks,
  chloride: fourWeeks,
  sulfate: fourWeeks,
};

/** They change at once, and are measured beside the well. */
export const measuredInField: readonly ParameterId[] = ['pH', 'temperature', 'freeChlorine'];
