import type { DrawnSheet } from '../drawn.ts';

/** What a sheet does against a law, as sentences that say page and place. */
export type Law = (sheet: DrawnSheet) => string[];

/** Millimetres as a reviewer reads them. */
export function mm(value: number): string {
  return value.toFixed(2);
}
