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
  pixels: number,
  least: number,
  toAt: (degrees: number) => number,
  halfOf: (degrees: number) => GraticuleLine['half'],
): GraticuleLine[] {
  const step = graticuleStep(to - from, Math.max(1, pixels / least));
  return graticuleLines(from, to, step).map((degrees) => ({
    at: toAt(degrees),
    angle: angleLabel(degrees > 180 ? degrees - 360 : degrees, step),
    half: halfOf(degrees > 180 ? degrees - 360 : degrees),
  }));
}

const nought = 1e-9;

/** The meridians and parallels that cross the window. */
export function graticuleOf(sight: Sight): {
  readonly meridians: readonly GraticuleLine[];
  readonly parallels: readonly GraticuleLine[];
} {
  const { plane, k, width, height } = sight;
  const { centre } = plane;
  const degreeX = toScreen(sight, { ...centre, longitude: centre.longitude + 1e-4 }).x - sight.x;
  const west = centre.longitude - sight.x / (degreeX * 1e4);
  const east = west + width / (degreeX * 1e4);
  const north = Math.min(90, toPosition(sight, { x: 0, y: 0 }).latitude);
  const south = Math.max(-90, toPosition(sight, { x: 0, y: height }).latitude);
  const pixelsHigh =
    (north - south) * k * plane.toPlane({ ...centre, latitude: centre.latitude + 1 }).northM;
  return {
    meridians: lines(
      [west, Math.min(east, west + 360)],
      width,
      apart.meridians,
      (longitude) => (longitude - west) * degreeX * 1e4,
      (longitude) => {
        if (Math.abs(longitude) < nought || Math.abs(Math.abs(longitude) - 180) < nought)
          return undefined;
        return longitude > 0 ? 'east' : 'west';
      },
    ),
    parallels: lines(
      [south, north],
      pixelsHigh,
      apart.parallels,
      (latitude) => toScreen(sight, { ...centre, latitude }).y,
      (latitude) => {
        if (Math.abs(latitude) < nought) return undefined;
        return latitude > 0 ? 'north' : 'south';
      },
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
