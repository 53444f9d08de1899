import type { LonLat, MapShape } from '../../../base/geo/shapes.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import { chained, solid } from '../../pens.ts';
import { group, polyline, type Point } from '../../shapes.ts';
import { toPaper, type MapView } from './view.ts';

/** Points nearer to the last one than this add nothing that can be seen. */
const nearest: PaperMm = 0.15;

/** A line without the points that cannot be seen. */
export function thinned(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  points.forEach((point, at) => {
    const last = kept.at(-1);
    const far = !last || Math.hypot(point[0] - last[0], point[1] - last[1]) >= nearest;
    if (far || at === points.length - 1) kept.push(point);
  });
  return kept;
}

/** Whether a line's reach meets the map. */
export function isSeen({ box }: MapView, points: readonly Point[]): boolean {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const least = (all: readonly number[]) => all.reduce((a, b) => Math.min(a, b));
  const most = (all: readonly number[]) => all.reduce((a, b) => Math.max(a, b));
  const across = most(xs) >= box.x && least(xs) <= box.x + box.width;
  return across && most(ys) >= box.y && least(ys) <= box.y + box.height;
}

/** Outlines in dashes and dots as boundaries are, other lines plain; cut at the edge of the map. */
export function drawBackdrop(view: MapView, shapes: readonly MapShape[]): Item {
  const paths = shapes.flatMap(({ closed, lines }) =>
    lines.flatMap((line: readonly LonLat[]) => {
      const points = thinned(line.map((place) => toPaper(view, place)));
      const stroke = closed ? chained('medium') : solid('narrow');
      return points.length > 1 && isSeen(view, points) ? [polyline(points, stroke)] : [];
    }),
  );
  return group('backdrop', paths, { clip: view.box });
}
