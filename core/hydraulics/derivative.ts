import type { OnAxis } from './methods/chooseReadings.ts';
import type { Derivative, DerivativePoint } from './results.ts';

/**
 * Slope of the drawdown over ln time (superposed; of a recovery over ln t/t′) by Bourdet: at each
 * reading the slopes to the nearest neighbours at least `smoothing` away on both sides, each
 * weighted by the other's distance. Readings without such neighbours have none.
 * Source: Bourdet, Ayoub and Pirard 1989.
 */
export function bourdetDerivative(on: OnAxis, smoothing: number): Derivative {
  const ln = on.x.map((x) => x * Math.LN10);
  const apart = (a: number, b: number) => Math.abs(ln[a]! - ln[b]!) >= smoothing;
  const points = on.readings.flatMap(({ minutes }, at): DerivativePoint[] => {
    let [before, after] = [at - 1, at + 1];
    while (before >= 0 && !apart(at, before)) before--;
    while (after < ln.length && !apart(at, after)) after++;
    if (before < 0 || after === ln.length) return [];
    const [left, right] = [ln[at]! - ln[before]!, ln[after]! - ln[at]!];
    const slopeLeft = (on.y[at]! - on.y[before]!) / left;
    const slopeRight = (on.y[after]! - on.y[at]!) / right;
    const derivativeM = (slopeLeft * right + slopeRight * left) / (left + right);
    return Number.isFinite(derivativeM) ? [{ minutes, derivativeM }] : [];
  });
  return { points, smoothing, source: 'bourdet1989' };
}
