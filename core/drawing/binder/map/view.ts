import { centreOf, extentOf } from '../../../base/geo/extent.ts';
import { planeAt, type LocalPlane } from '../../../base/geo/localPlane.ts';
import type { LonLat } from '../../../base/geo/shapes.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Box } from '../../items.ts';
import type { Point } from '../../shapes.ts';

/** A part of the globe on paper, north up. */
export interface MapView {
  readonly box: Box;
  /** 50 000 stands for 1 : 50 000; right at the middle of the box. */
  readonly scale: number;
  readonly plane: LocalPlane;
}

const positionOf = ([longitude, latitude]: LonLat) => ({ latitude, longitude });

export function toPaper({ box, scale, plane }: MapView, place: LonLat): Point {
  const { eastM, northM } = plane.toPlane(positionOf(place));
  const mm = (metres: number) => (metres * 1000) / scale;
  return [box.x + box.width / 2 + mm(eastM), box.y + box.height / 2 - mm(northM)];
}

export function fromPaper({ box, scale, plane }: MapView, [x, y]: Point): LonLat {
  const metres = (mm: PaperMm) => (mm * scale) / 1000;
  const eastM = metres(x - box.x - box.width / 2);
  const northM = metres(box.y + box.height / 2 - y);
  const { latitude, longitude } = plane.toPosition({ eastM, northM });
  return [longitude, latitude];
}

export function isOnMap({ x, y, width, height }: Box, [px, py]: Point): boolean {
  return px >= x && px <= x + width && py >= y && py <= y + height;
}

/** A map of one village shows some of what lies round it. */
export const largestScale = 5000;

/** The next scale as maps have them, at or above a figure. */
function roundScale(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const times = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5, 10].find(
    (one) => one * power >= least * (1 - 1e-9),
  )!;
  return times * power;
}

/** Kept free round the outermost wells, for their labels. */
const pad: PaperMm = 14;

/** The largest round scale at which some places stand in a box. */
export function fitView(places: readonly LonLat[], box: Box): MapView {
  const extent = extentOf(places.map(positionOf))!;
  const plane = planeAt(centreOf(extent));
  const points = places.map((place) => plane.toPlane(positionOf(place)));
  const reach = (values: readonly number[]) =>
    2 * values.reduce((most, one) => Math.max(most, Math.abs(one)), 0) * 1000;
  const across = reach(points.map(({ eastM }) => eastM)) / (box.width - 2 * pad);
  const down = reach(points.map(({ northM }) => northM)) / (box.height - 2 * pad);
  return { box, plane, scale: roundScale(Math.max(across, down, largestScale)) };
}
