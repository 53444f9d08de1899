import type { Millimetres } from '../../base/units.ts';

/** What a pipe's material brings against collapse. */
export interface Stiffness {
  readonly modulusMPa: number;
  readonly poisson: number;
}

/** How a material loses strength in the warmth. */
export interface HeatLoss {
  /** Temperature at which its strength is stated. */
  readonly ratedAtC: number;
  /** Per cent of it lost for each degree above. */
  readonly lossPercentPerC: number;
}

const kPaPerMPa = 1000;
/** Pressure of a metre of fresh water, kilopascals: 1 t/m³ × 9.80665 m/s². */
export const waterKPaPerM = 9.80665;

/** Outside diameter over wall, as pipes are classed by. */
export function dimensionRatio(outsideMm: Millimetres, wallMm: Millimetres): number {
  return outsideMm / wallMm;
}

/**
 * Pressure from outside at which a round pipe collapses, kilopascals:
 * P = 2E / (1 − ν²) / (DR (DR − 1)²), ASTM F480. It holds for whole pipe, not for slotted.
 */
export function collapseKPa(ratio: number, { modulusMPa, poisson }: Stiffness): number {
  const stiffnessKPa = (2 * modulusMPa * kPaPerMPa) / (1 - poisson * poisson);
  return stiffnessKPa / (ratio * (ratio - 1) ** 2);
}

/**
 * What is left of a collapse pressure at a temperature; never less than nothing. It goes with the
 * modulus, which PVC loses evenly in the warmth, so that thin and thick pipe lose the same share.
 */
export function inWarmthKPa(
  ratedKPa: number,
  atC: number,
  { ratedAtC, lossPercentPerC }: HeatLoss,
): number {
  const lossShare = (Math.max(0, atC - ratedAtC) * lossPercentPerC) / 100;
  return ratedKPa * Math.max(0, 1 - lossShare);
}
