import { intervalLevel } from './special/studentT.ts';
import type { Metres } from '../base/units.ts';
import type { Interval, M2PerDay, M3PerDay, Minutes } from './results.ts';

export const minutesPerDay = 1440;

/** T = 2.303 Q / 4π Δs, from the slope of drawdown over a log cycle. Cooper and Jacob 1946. */
export function transmissivityM2d(rateM3d: M3PerDay, slopeM: Metres): M2PerDay {
  return (Math.LN10 * rateM3d) / (4 * Math.PI * slopeM);
}

/** Interval of T from that of the slope; without an upper end where the slope may be nil. */
export function transmissivityInterval(
  rateM3d: M3PerDay,
  slopeM: Metres,
  halfM: Metres | undefined,
): { interval: Interval } | object {
  if (halfM === undefined) return {};
  const lowest = transmissivityM2d(rateM3d, slopeM + halfM);
  const flattest = slopeM - halfM;
  const highest = flattest > 0 ? { highest: transmissivityM2d(rateM3d, flattest) } : {};
  return { interval: { lowest, ...highest, level: intervalLevel, basis: 'regression' } };
}

/** An interval to both sides of a value; nothing where no half-width is known. */
export function around(
  value: number,
  half: number | undefined,
  basis: Interval['basis'] = 'regression',
): { interval: Interval } | object {
  if (half === undefined) return {};
  return { interval: { lowest: value - half, highest: value + half, level: intervalLevel, basis } };
}

/**
 * Until then the water comes out of the casing: 25 rc²/T. Source: Papadopulos and Cooper 1967.
 */
export function casingStorageMinutes(casingRadiusM: Metres, T: M2PerDay): Minutes {
  return ((25 * casingRadiusM ** 2) / T) * minutesPerDay;
}

/** u = r² S / 4 T t. */
export function uAt(radiusM: Metres, storage: number, T: M2PerDay, minutes: Minutes): number {
  return (radiusM ** 2 * storage) / ((4 * T * minutes) / minutesPerDay);
}
