import type { Metres, Millimetres } from '../../base/units.ts';
import { mmPerM } from '../../base/units.ts';

export const gravityMs2 = 9.81;
export const waterKgM3 = 1000;
const secondsPerHour = 3600;
/** Up to here flow is laminar. */
const laminarMost = 2000;

/**
 * Darcy's friction factor: 64/Re in laminar flow, else after Swamee and Jain (1976), which stays
 * within some 3 % of Colebrook's for Re from 5e3 to 1e8. Between 2000 and 5000 it errs to the safe
 * side. Zero for water at rest.
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  if (reynolds <= 0) return 0;
  if (reynolds <= laminarMost) return 64 / reynolds;
  return 0.25 / Math.log10(relativeRoughness / 3.7 + 5.74 / reynolds ** 0.9) ** 2;
}

export interface PipeRun {
  readonly flowM3h: number;
  readonly lengthM: Metres;
  readonly insideMm: Millimetres;
  readonly roughnessMm: Millimetres;
  readonly viscosityM2s: number;
}

/** Head lost in a straight pipe, metres of water (Darcy–Weisbach: f · L/d · v²/2g). */
export function pipeFrictionM(run: PipeRun): Metres {
  const insideM = run.insideMm / mmPerM;
  if (!(insideM > 0)) return 0;
  const speedMs = run.flowM3h / secondsPerHour / ((Math.PI / 4) * insideM * insideM);
  const factor = frictionFactor(
    (speedMs * insideM) / run.viscosityM2s,
    run.roughnessMm / run.insideMm,
  );
  return (factor * (run.lengthM / insideM) * speedMs * speedMs) / (2 * gravityMs2);
}

/** Power that lifts water, watts: ρ · g · Q · H. */
export function hydraulicWatts(flowM3h: number, headM: Metres): number {
  return (waterKgM3 * gravityMs2 * flowM3h * headM) / secondsPerHour;
}
