import { geoPath, geoTransform } from 'd3';
import type { Backdrop } from '../../core/contract/backdropShape.ts';
import type { LocalPlane } from '../../core/base/geo/localPlane.ts';
import type { LonLat, MapShape } from '../../core/base/geo/shapes.ts';
import { labelWidth, letters } from './mapLabels.ts';
import type { ScreenPoint, Sight } from './mapScene.ts';

/** A backdrop drawn on a plane, metres east and south of its centre. */
export interface BackdropPath {
  readonly id: string;
  /** Outlines, and lines, as SVG path data. */
  readonly outlines: string;
  readonly lines: string;
  readonly names: readonly ShapeName[];
}

interface ShapeName {
  readonly text: string;
  /** Middle of the shape's longest line, and how wide that line is, metres on the plane. */
  readonly x: number;
  readonly y: number;
  readonly wide: number;
}

function longest(lines: MapShape['lines']): readonly LonLat[] {
  return lines.reduce((best, line) => (line.length > best.length ? line : best), lines[0] ?? []);
}

function nameOf(shape: MapShape, plane: LocalPlane): ShapeName[] {
  if (shape.name === undefined) return [];
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [longitude, latitude] of longest(shape.lines)) {
    const { eastM, northM } = plane.toPlane({ longitude, latitude });
    [left, right] = [Math.min(left, eastM), Math.max(right, eastM)];
    [top, bottom] = [Math.min(top, -northM), Math.max(bottom, -northM)];
  }
  return [{ text: shape.name, x: (left + right) / 2, y: (top + bottom) / 2, wide: right - left }];
}

/** The same lines, as the library's types want them. */
const mutable = (lines: MapShape['lines']) => lines as unknown as [number, number][][];

/** Draws backdrops on a plane, once for as long as it is the map's. */
export function backdropPaths(
  backdrops: readonly Backdrop[],
  plane: LocalPlane,
): readonly BackdropPath[] {
  const projection = geoTransform({
    point(longitude, latitude) {
      const { eastM, northM } = plane.toPlane({ longitude, latitude });
      this.stream.point(eastM, -northM);
    },
  });
  const path = geoPath(projection).digits(0);
  const drawn = (shapes: readonly MapShape[]) =>
    shapes
      .map(({ lines }) => path({ type: 'MultiLineString', coordinates: mutable(lines) }))
      .join('');
  return backdrops.map(({ id, shapes }) => ({
    id,
    outlines: drawn(shapes.filter(({ closed }) => closed)),
    lines: drawn(shapes.filter(({ closed }) => !closed)),
    names: shapes.flatMap((shape) => nameOf(shape, plane)),
  }));
}

export interface PlacedName extends ScreenPoint {
  readonly text: string;
}

/** Most names at once: of a map with more, only a part could be read. */
const mostNames = 60;

/** Names of shapes that are wide enough in the window to bear them, none over another. */
export function shapeNames(paths: readonly BackdropPath[], sight: Sight): PlacedName[] {
  const placed: (PlacedName & { readonly width: number })[] = [];
  for (const { text, x, y, wide } of paths.flatMap(({ names }) => names)) {
    const width = labelWidth(text);
    const at = { x: x * sight.k + sight.x, y: y * sight.k + sight.y };
    const outside = at.x < 0 || at.y < 0 || at.x > sight.width || at.y > sight.height;
    if (outside || wide * sight.k < width || placed.length >= mostNames) continue;
    const clash = placed.some(
      (other) =>
        Math.abs(other.x - at.x) < (other.width + width) / 2 &&
        Math.abs(other.y - at.y) < letters + 3,
    );
    if (!clash) placed.push({ ...at, text, width });
  }
  return placed;
}
