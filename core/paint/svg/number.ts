import type { PaperMm } from '../../base/units.ts';

const perMm = 1000;

/**
 * A length on paper as text, rounded to 0.001 mm so that the same drawing gives the same text on
 * every machine. Throws on a number that is none: the layout that made it is at fault.
 */
export function mm(value: PaperMm): string {
  if (!Number.isFinite(value)) throw new Error(`A drawing holds ${value} where a length belongs`);
  const rounded = Math.round(value * perMm) / perMm;
  return String(rounded === 0 ? 0 : rounded);
}

/** Several lengths with one space between. */
export function mms(...values: readonly PaperMm[]): string {
  return values.map(mm).join(' ');
}
