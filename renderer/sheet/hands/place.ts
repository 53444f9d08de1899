import type { DepthM, PaperMm } from '../../../core/base/units.ts';
import type { PageAxis, Span } from '../../../core/drawing/items.ts';
import { yOf, type DepthRange } from '../../../core/drawing/scale.ts';
import type { Handle, Lane } from '../../state/hands/handle.ts';

/** Where a handle stands on a page, in millimetres of paper. */
export interface Place {
  readonly handle: Handle;
  readonly y: PaperMm;
  /** Across the page: where its line is drawn and can be taken hold of. */
  readonly spans: readonly Span[];
  /** How far above and below the line it can be taken hold of. */
  readonly up: PaperMm;
  readonly down: PaperMm;
}

/** Depths this near to an end of an axis stand on it: sums of pipes carry dust. */
const dustM = 1e-6;
/** Half the width for what stands in the pipe, where no diameter tells. */
const insideHalf: PaperMm = 4;
/** What edges of the hole keep for themselves at the sides of the section. */
const boreWidth: PaperMm = 3;
/** A ring is never narrower to the hand than this. */
const leastRing: PaperMm = 2.5;
/** Rises stand on the left of the water column, strikes on its right. */
const riseWidth: PaperMm = 3.2;

export function isOn({ fromM, toM }: DepthRange, depthM: DepthM): boolean {
  return depthM >= fromM - dustM && depthM <= toM + dustM;
}

/** Whether a depth is drawn: what a break leaves out cannot be taken hold of. */
function isDrawn({ stretches }: PageAxis, depthM: DepthM): boolean {
  return stretches.some((one) => isOn(one, depthM));
}

function between(left: PaperMm, right: PaperMm): Span {
  return { x: left, width: right - left };
}

/** Both sides of a ring round the well's centre line. */
function ringSpans({ spans, mmPerMm = 0 }: PageAxis, { ringMm }: Handle): Span[] {
  const { x, width } = spans.section;
  const [centre, most] = [x + width / 2, width / 2 - boreWidth];
  const inner = Math.min(((ringMm?.inner ?? 0) / 2) * mmPerMm, most - leastRing);
  const outer = Math.min(Math.max(((ringMm?.outer ?? 0) / 2) * mmPerMm, inner + leastRing), most);
  return ringMm && mmPerMm > 0
    ? [between(centre - outer, centre - inner), between(centre + inner, centre + outer)]
    : [between(centre - most, centre + most)];
}

function middleSpan({ spans, mmPerMm = 0 }: PageAxis, { ringMm }: Handle): Span {
  const { x, width } = spans.section;
  const half = ringMm && mmPerMm > 0 ? (ringMm.outer / 2) * mmPerMm : insideHalf;
  const kept = Math.min(half, width / 2);
  return between(x + width / 2 - kept, x + width / 2 + kept);
}

type SpansOf = (axis: PageAxis, handle: Handle) => Span[];

const spansIn: Readonly<Record<Lane, SpansOf>> = {
  ground: ({ spans }) => [spans.ground],
  strikes: ({ spans: { water } }) => [between(water.x + riseWidth, water.x + water.width)],
  rises: ({ spans: { water } }) => [{ x: water.x, width: riseWidth }],
  bore: ({ spans: { section } }) => [
    { x: section.x, width: boreWidth },
    { x: section.x + section.width - boreWidth, width: boreWidth },
  ],
  annulus: ringSpans,
  joints: (axis, handle) => [middleSpan(axis, handle)],
  inside: (axis, handle) => [middleSpan(axis, handle)],
};

/** Half the way to the nearest neighbour of the lane, and no farther than a hand reaches. */
function reach(y: PaperMm, others: readonly PaperMm[], most: PaperMm): PaperMm {
  return others.reduce((least, other) => Math.min(least, Math.abs(other - y) / 2), most);
}

/** Whether a view shows the column that a handle stands in. */
function hasLane({ spans }: PageAxis, { lane }: Handle): boolean {
  return (lane !== 'strikes' && lane !== 'rises') || spans.water.width > 0;
}

/** The handles that a view shows, with a hand that reaches `most` millimetres up and down. */
export function placesOn(axis: PageAxis, handles: readonly Handle[], most: PaperMm): Place[] {
  const shown = handles
    .filter((handle) => isDrawn(axis, handle.depthM) && hasLane(axis, handle))
    .map((handle) => ({ handle, y: yOf(axis, handle.depthM) }));
  return shown.map(({ handle, y }) => {
    const lane = shown.filter((one) => one.handle.lane === handle.lane).map((one) => one.y);
    return {
      handle,
      y,
      spans: spansIn[handle.lane](axis, handle),
      up: reach(
        y,
        lane.filter((other) => other < y),
        most,
      ),
      down: reach(
        y,
        lane.filter((other) => other > y),
        most,
      ),
    };
  });
}
