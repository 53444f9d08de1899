import type { DepthM, Millimetres, PaperMm } from '../base/units.ts';
import { mmPerM } from '../base/units.ts';

/**
 * Reductions of ISO 5455 (from memory), the largest drawing first. The last three go on in its
 * pattern: a depth typed without its decimal mark must still find a sheet to be seen on.
 */
export const depthScales = [
  20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000,
] as const;
export const widthScales = [2, 5, 10, 20, 50] as const;

/** Where depths stand on a page. */
export interface DepthAxis {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  /** 200 for 1:200. */
  readonly scale: number;
  /** Where `fromM` stands on the page. */
  readonly top: PaperMm;
}

export function paperLength(metres: number, scale: number): PaperMm {
  return (metres * mmPerM) / scale;
}

export function yAt(axis: DepthAxis, depthM: DepthM): PaperMm {
  return axis.top + paperLength(depthM - axis.fromM, axis.scale);
}

export function axisBottom(axis: DepthAxis): PaperMm {
  return yAt(axis, axis.toM);
}

/** The part of a range that a page shows, or undefined where it shows none. */
export function shownPart(
  axis: DepthAxis,
  fromM: DepthM,
  toM: DepthM,
): { fromM: DepthM; toM: DepthM } | undefined {
  const from = Math.max(fromM, axis.fromM);
  const to = Math.min(toM, axis.toM);
  return to > from ? { fromM: from, toM: to } : undefined;
}

/** Whether a page shows a depth; a depth on the match line belongs to the upper page. */
export function shows(axis: DepthAxis, depthM: DepthM, firstPage: boolean): boolean {
  return depthM <= axis.toM && (depthM > axis.fromM || (firstPage && depthM >= axis.fromM));
}

/** The largest preferred scale at which a diameter fits into a width; the smallest if none does. */
export function widthScaleFor(largestMm: Millimetres, room: PaperMm): number {
  return widthScales.find((scale) => largestMm / scale <= room) ?? widthScales.at(-1)!;
}
