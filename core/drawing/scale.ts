import type { DepthM, Millimetres, PaperMm } from '../base/units.ts';
import { mmPerM } from '../base/units.ts';
import type { PageAxis, Stretch } from './items.ts';

/**
 * Reductions of ISO 5455 (from memory), the largest drawing first. The last three go on in its
 * pattern: a depth typed without its decimal mark must still find a sheet to be seen on.
 */
export const depthScales = [
  20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000,
] as const;
export const widthScales = [2, 5, 10, 20, 50] as const;

/** Depths from one to another. */
export interface DepthRange {
  readonly fromM: DepthM;
  readonly toM: DepthM;
}

/** Where depths stand on a page. */
export interface DepthAxis extends DepthRange {
  /** 200 for 1:200. */
  readonly scale: number;
  /** Where `fromM` stands on the page. */
  readonly top: PaperMm;
  /** Depths within the axis that the page leaves out, from the top down; each is a break. */
  readonly leftOut?: readonly DepthRange[];
}

/** Height of the mark that stands for depths left out. */
export const breakHeight: PaperMm = 7;

export function paperLength(metres: number, scale: number): PaperMm {
  return (metres * mmPerM) / scale;
}

/** What of a page's axis tells depths and heights. */
export type AxisPlace = Pick<PageAxis, 'stretches' | 'mmPerM'>;

/** The stretches that an axis shows, with a break between each and the next. */
export function stretchesOf({ fromM, toM, scale, top, leftOut = [] }: DepthAxis): Stretch[] {
  const starts = [fromM, ...leftOut.map((one) => one.toM)];
  const ends = [...leftOut.map((one) => one.fromM), toM];
  let at = top;
  return starts.map((start, n) => {
    const stretch = { fromM: start, toM: ends[n]!, top: at };
    at += paperLength(ends[n]! - start, scale) + breakHeight;
    return stretch;
  });
}

/** Where a stretch ends on the page. */
function footOf({ fromM, toM, top }: Stretch, mm: PaperMm): PaperMm {
  return top + (toM - fromM) * mm;
}

/** What a depth or height that lies between two stretches is a part of; 0 to 1 from the upper. */
function between(value: number, upper: number, lower: number): number {
  return lower > upper ? (value - upper) / (lower - upper) : 0;
}

/** Where a depth stands on the page; a depth that is left out stands within its break. */
export function yOf({ stretches, mmPerM: mm }: AxisPlace, depthM: DepthM): PaperMm {
  const after = stretches.findIndex(({ toM }) => depthM <= toM);
  const at = after < 0 ? stretches.length - 1 : after;
  const [upper, stretch] = [stretches[at - 1], stretches[at]!];
  if (!upper || depthM >= stretch.fromM) return stretch.top + (depthM - stretch.fromM) * mm;
  const part = between(depthM, upper.toM, stretch.fromM);
  return footOf(upper, mm) + part * (stretch.top - footOf(upper, mm));
}

/** The depth that stands at a height of the page; within a break one of those left out. */
export function depthOf({ stretches, mmPerM: mm }: AxisPlace, y: PaperMm): DepthM {
  const after = stretches.findIndex((one) => y <= footOf(one, mm));
  const at = after < 0 ? stretches.length - 1 : after;
  const [upper, stretch] = [stretches[at - 1], stretches[at]!];
  if (!upper || y >= stretch.top) return stretch.fromM + (y - stretch.top) / mm;
  const part = between(y, footOf(upper, mm), stretch.top);
  return upper.toM + part * (stretch.fromM - upper.toM);
}

function placeOf(axis: DepthAxis): AxisPlace {
  return { stretches: stretchesOf(axis), mmPerM: paperLength(1, axis.scale) };
}

export function yAt(axis: DepthAxis, depthM: DepthM): PaperMm {
  if (axis.leftOut) return yOf(placeOf(axis), depthM);
  return axis.top + paperLength(depthM - axis.fromM, axis.scale);
}

export function depthAt(axis: DepthAxis, y: PaperMm): DepthM {
  return depthOf(placeOf(axis), y);
}

export function axisBottom(axis: DepthAxis): PaperMm {
  return yAt(axis, axis.toM);
}

/** Whether a page leaves a depth out; the ends of a break are shown. */
export function isLeftOut({ leftOut = [] }: DepthAxis, depthM: DepthM): boolean {
  return leftOut.some(({ fromM, toM }) => depthM > fromM && depthM < toM);
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

/** How far what points into a range keeps from a break. */
const clearOfBreak: PaperMm = 1.5;

/** The depth in the middle of a range as it stands on the page, beside a break rather than in it. */
export function shownMiddle(axis: DepthAxis, { fromM, toM }: DepthRange): DepthM {
  if (!axis.leftOut) return (fromM + toM) / 2;
  const y = (yAt(axis, fromM) + yAt(axis, toM)) / 2;
  const broken = axis.leftOut
    .map((one) => [yAt(axis, one.fromM) - clearOfBreak, yAt(axis, one.toM) + clearOfBreak] as const)
    .find(([top, foot]) => y > top && y < foot);
  if (!broken) return depthAt(axis, y);
  return depthAt(axis, y - broken[0] <= broken[1] - y ? broken[0] : broken[1]);
}

/** Whether a page shows a depth; a depth on the match line belongs to the upper page. */
export function shows(axis: DepthAxis, depthM: DepthM, firstPage: boolean): boolean {
  const within = depthM <= axis.toM && (depthM > axis.fromM || (firstPage && depthM >= axis.fromM));
  return within && !isLeftOut(axis, depthM);
}

/** The largest preferred scale at which a diameter fits into a width; the smallest if none does. */
export function widthScaleFor(largestMm: Millimetres, room: PaperMm): number {
  return widthScales.find((scale) => largestMm / scale <= room) ?? widthScales.at(-1)!;
}
