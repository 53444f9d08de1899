import type { Position } from '../../core/base/geo/ellipsoid.ts';
import { angleLabel, graticuleLines, graticuleStep } from '../../core/base/geo/graticule.ts';
import { stretchAt, type LocalPlane } from '../../core/base/geo/localPlane.ts';
import { scaleBarM } from '../../core/base/geo/scaleBar.ts';

/** A map as it is seen: a plane, pixels a metre, where its centre stands, and the window. */
export interface Sight {
  readonly plane: LocalPlane;
  readonly k: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

export function toScreen({ plane, k, x, y }: Sight, position: Position): ScreenPoint {
  const { eastM, northM } = plane.toPlane(position);
  return { x: eastM * k + x, y: -northM * k + y };
}

export function toPosition({ plane, k, x, y }: Sight, at: ScreenPoint): Position {
  return plane.toPosition({ eastM: (at.x - x) / k, northM: -(at.y - y) / k });
}

/** A line of the graticule, where it crosses the window, and what is written at it. */
export interface GraticuleLine {
  readonly at: number;
  readonly angle: string;
  /** The half of the globe; neither on the equator, the zero meridian and the date line. */
  readonly half: 'north' | 'south' | 'east' | 'west' | undefined;
}

/** Pixels between lines at the least: their labels have to have room. */
const apart = { meridians: 110, parallels: 80 };

function lines(
  [from, to]: readonly [number, number],
  step: number,
  toAt: (degrees: number) => number,
  halfOf: (degrees: number) => GraticuleLine['half'],
): GraticuleLine[] {
  return graticuleLines(from, to, step).map((line) => {
    const degrees = line > 180 ? line - 360 : line;
    return { at: toAt(line), angle: angleLabel(degrees, step), half: halfOf(degrees) };
  });
}

const nought = 1e-9;

function halfByLongitude(degrees: number): GraticuleLine['half'] {
  const size = Math.abs(degrees);
  if (size < nought || Math.abs(size - 180) < nought) return undefined;
  return degrees > 0 ? 'east' : 'west';
}

function halfByLatitude(degrees: number): GraticuleLine['half'] {
  if (Math.abs(degrees) < nought) return undefined;
  return degrees > 0 ? 'north' : 'south';
}

/** The meridians and parallels that cross the window, both in the same step. */
export function graticuleOf(sight: Sight): {
  readonly meridians: readonly GraticuleLine[];
  readonly parallels: readonly GraticuleLine[];
} {
  const { plane, k, x, y, width, height } = sight;
  const { latitude, longitude } = plane.centre;
  const wideDegree = k * plane.toPlane({ latitude, longitude: longitude + 1 }).eastM;
  const highDegree = k * plane.toPlane({ latitude: latitude + 1, longitude }).northM;
  const west = longitude - x / wideDegree;
  const east = Math.min(west + width / wideDegree, west + 360);
  const north = Math.min(90, latitude + y / highDegree);
  const south = Math.max(-90, latitude - (height - y) / highDegree);
  const step = Math.max(
    graticuleStep(width / wideDegree, Math.max(1, width / apart.meridians)),
    graticuleStep(height / highDegree, Math.max(1, height / apart.parallels)),
  );
  return {
    meridians: lines([west, east], step, (at) => (at - west) * wideDegree, halfByLongitude),
    parallels: lines(
      [south, north],
      step,
      (at) => y - (at - latitude) * highDegree,
      halfByLatitude,
    ),
  };
}

/** Pixels that a scale bar has at most. */
const longestBar = 130;

/** A bar that is true to scale, east to west, at the latitude of the window's middle. */
export function scaleBarOf(sight: Sight): { readonly metres: number; readonly pixels: number } {
  const middle = toPosition(sight, { x: sight.width / 2, y: sight.height / 2 });
  const latitude = Math.max(-89, Math.min(89, middle.latitude));
  const pixelsAMetre = sight.k * stretchAt(sight.plane, latitude);
  const metres = scaleBarM(longestBar / pixelsAMetre);
  return { metres, pixels: metres * pixelsAMetre };
}
