import type { Estimate, MethodResult } from '../../../core/hydraulics/results.ts';
import type { QuantityId } from '../../../core/hydraulics/codes.ts';

/** One estimate of a result, which has to be there. */
export function estimateOf(result: MethodResult | undefined, id: QuantityId): Estimate {
  const found = result?.estimates.find((one) => one.id === id);
  if (!found) throw new Error(`no ${id} in ${result?.method ?? 'no result'}`);
  return found;
}

/** The value of one estimate of a result. */
export function valueOf(result: MethodResult | undefined, id: QuantityId): number {
  return estimateOf(result, id).value;
}

/** How far a value lies from another, as a share of it. */
export function off(value: number, from: number): number {
  return Math.abs(value / from - 1);
}
