import type { MethodResult } from './results.ts';

/** True of a value whose numbers are all finite, however deep. */
export function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  return Object.values(value).every(allFinite);
}

/** The results that are numbers throughout; figures out of all measure may overflow a method. */
export function soundResults(results: readonly (MethodResult | undefined)[]): MethodResult[] {
  return results.filter((result) => result !== undefined).filter(allFinite);
}
