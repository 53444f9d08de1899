import type { M3PerDay, Minutes, RateChange } from './results.ts';

/** A change of rate as superposition takes it: by how much, and when. */
export interface Impulse {
  readonly fromMin: Minutes;
  readonly byM3d: M3PerDay;
}

/** Rates as their changes; the pump stands before the first. */
export function impulsesOf(rates: readonly RateChange[]): Impulse[] {
  return rates.map(({ fromMin, rateM3d }, at) => ({
    fromMin,
    byM3d: rateM3d - (rates[at - 1]?.rateM3d ?? 0),
  }));
}

/** Rate at some time: of the last change before it. */
export function rateAt(rates: readonly RateChange[], minutes: Minutes): M3PerDay {
  return rates.findLast(({ fromMin }) => fromMin < minutes)?.rateM3d ?? 0;
}

/** Rates with the stop that ends them. */
export function stoppedAt(rates: readonly RateChange[], minutes: Minutes): RateChange[] {
  return [...rates, { fromMin: minutes, rateM3d: 0 }];
}

/**
 * Σ ΔQ log₁₀(t − tᵢ), the time axis on which the drawdown of changing rates is a straight line;
 * m³/d times log minutes. With one rate it is Q log₁₀ t, of a recovery Q log₁₀(t/t′).
 * Source: Birsoy and Summers 1980, from Cooper and Jacob 1946.
 */
export function superposedLog(impulses: readonly Impulse[], minutes: Minutes): number {
  return impulses
    .filter(({ fromMin }) => fromMin < minutes)
    .reduce((sum, { fromMin, byM3d }) => sum + byM3d * Math.log10(minutes - fromMin), 0);
}
