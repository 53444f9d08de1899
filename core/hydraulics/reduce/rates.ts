import type { AssumptionCode } from '../codes.ts';
import { limits } from '../limits.ts';
import type { RateChange, Said } from '../results.ts';
import type { SeriesReading } from './readSeries.ts';

const hoursPerDay = 24;

/** Cubic metres an hour as the record has them, in cubic metres a day. */
export function perDay(rateM3h: number): number {
  return rateM3h * hoursPerDay;
}

export interface Rates {
  readonly rates: readonly RateChange[];
  readonly assumptions: readonly Said<AssumptionCode>[];
}

const meanOf = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

/** Greatest distance from the mean, as a share of it. */
function spreadOf(list: readonly number[]): number {
  const mean = meanOf(list);
  return Math.max(...list.map((one) => Math.abs(one - mean))) / mean;
}

/** Rates of rows that tell one. */
function toldRates(rows: readonly SeriesReading[]): number[] {
  return rows.map(({ rateM3h }) => rateM3h).filter((rate) => rate !== undefined);
}

/**
 * One rate of a step: the mean of what was read. A nil among others is passed over, since a step is
 * pumped throughout. Undefined where nothing tells it.
 */
export function stepRate(
  rows: readonly SeriesReading[],
  wholeM3h: number | undefined,
): number | undefined {
  const told = toldRates(rows);
  const pumped = told.filter((rate) => rate > 0);
  if (pumped.length > 0) return meanOf(pumped);
  return told.length > 0 ? 0 : wholeM3h;
}

/** A rate that was read holds since the reading before it, until it changes by more than a little. */
function history(rows: readonly SeriesReading[]): RateChange[] {
  const changes: RateChange[] = [];
  let plateau: number | undefined;
  rows.forEach(({ rateM3h }, at) => {
    if (rateM3h === undefined) return;
    const same =
      plateau !== undefined &&
      Math.abs(rateM3h - plateau) <= limits.rateSpread * Math.max(plateau, rateM3h);
    if (same) return;
    plateau = rateM3h;
    changes.push({ fromMin: rows[at - 1]?.minutes ?? 0, rateM3d: perDay(rateM3h) });
  });
  const starts = changes.findIndex(({ rateM3d }) => rateM3d > 0);
  return starts < 0 ? [] : changes.slice(starts);
}

function varying(rows: readonly SeriesReading[]): Rates {
  const rates = history(rows);
  const late = rates[0] !== undefined && rates[0].fromMin > 0;
  const superposed: Said<AssumptionCode>[] =
    rates.length > 1 ? [{ code: 'ratesSuperposed', values: {} }] : [];
  const delayed: Said<AssumptionCode>[] = late
    ? [{ code: 'delayedStart', values: { minutes: rates[0]!.fromMin } }]
    : [];
  return { rates, assumptions: [...superposed, ...delayed] };
}

/**
 * Rates of a test at one rate: the readings' own where they differ by more than 5 % from their
 * mean, else the rate of the test or that mean. Empty where nothing tells a rate.
 */
export function ratesOf(rows: readonly SeriesReading[], wholeM3h: number | undefined): Rates {
  const told = toldRates(rows);
  if (told.length > 0 && spreadOf(told) > limits.rateSpread) return varying(rows);
  const rateM3h = wholeM3h ?? (told.length > 0 ? meanOf(told) : undefined);
  if (rateM3h === undefined || !(rateM3h > 0)) return { rates: [], assumptions: [] };
  const spread = told.length > 1 ? spreadOf(told) : 0;
  return {
    rates: [{ fromMin: 0, rateM3d: perDay(rateM3h) }],
    assumptions:
      spread > 0 ? [{ code: 'rateAveraged', values: { rate: rateM3h, spread: 100 * spread } }] : [],
  };
}
