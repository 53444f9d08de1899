import type { MapShape } from '../../../base/geo/shapes.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Box } from '../../items.ts';
import { fitted, widthOf } from '../../letters.ts';
import { letterings } from '../../pens.ts';
import type { Point } from '../../shapes.ts';
import type { BinderKit } from '../binder.ts';
import type { MapLabel } from './labels.ts';
import { isOnMap, toPaper, type MapView } from './view.ts';
import { signHalf } from './wellSign.ts';

/** The name of an outline on a map: left end of its baseline, and its width. */
export interface OutlineName {
  readonly text: string;
  readonly at: Point;
  readonly width: PaperMm;
}

export const nameLook = { lettering: 'normal', face: 'bold' } as const;
const high = letterings.normal;
const widest: PaperMm = 70;
const pad: PaperMm = 1;
/** Between two places where a name is tried. */
const step: PaperMm = 4;

/** Whether a point lies in rings, by the count of their edges to its right; holes lie outside. */
function isIn(rings: readonly (readonly Point[])[], [x, y]: Point): boolean {
  let inside = false;
  for (const ring of rings)
    ring.forEach(([ax, ay], at) => {
      const [bx, by] = ring[(at + 1) % ring.length]!;
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    });
  return inside;
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

const span = (from: number, to: number) =>
  Array.from(
    { length: Math.max(0, Math.floor((to - from) / step) + 1) },
    (_, at) => from + at * step,
  );

/** Corners, and middles of the long sides: a name of which these lie in an outline does. */
function rimOf({ x, y, width, height }: Box): Point[] {
  return [0, 0.5, 1].flatMap((share): Point[] => [
    [x + share * width, y],
    [x + share * width, y + height],
  ]);
}

const signBox = ([x, y]: Point): Box => ({
  x: x - signHalf,
  y: y - signHalf,
  width: 2 * signHalf,
  height: 2 * signHalf,
});

/** A little box round each stretch of a leader, so that a slanting one takes no wide room. */
function leaderBoxes([[ax, ay], [bx, by]]: NonNullable<MapLabel['leader']>): Box[] {
  const steps = Math.ceil(Math.hypot(bx - ax, by - ay));
  return Array.from({ length: steps + 1 }, (_, at) => {
    const share = at / Math.max(1, steps);
    const [x, y] = [ax + share * (bx - ax), ay + share * (by - ay)];
    return { x: x - 0.5, y: y - 0.5, width: 1, height: 1 };
  });
}

/** What of the wells stands on a map. */
function takenBy(labels: readonly MapLabel[], named: boolean): Box[] {
  return labels.flatMap(({ point, at, width, leader }) => {
    const [x, y] = at ?? point;
    const text = {
      x: x - 0.5,
      y: y - letterings.small - 0.5,
      width: width + 1,
      height: letterings.small * 1.3 + 1,
    };
    return [
      signBox(point),
      ...(named && at ? [text] : []),
      ...(named && leader ? leaderBoxes(leader) : []),
    ];
  });
}

/**
 * Names of outlines in what a map shows of them, each where it is nearest to the middle of that and
 * lies on no sign, label or other name; one for which there is no room is left out.
 */
export function outlineNames(
  kit: BinderKit,
  view: MapView,
  shapes: readonly MapShape[],
  labels: readonly MapLabel[],
  more: { readonly named: boolean; readonly taken: readonly Box[] },
): OutlineName[] {
  const { box } = view;
  const taken = [...takenBy(labels, more.named), ...more.taken];
  return shapes.flatMap(({ name = '', closed, lines }): OutlineName[] => {
    if (!closed || name.trim() === '') return [];
    const rings = lines.map((line) => line.map((place) => toPaper(view, place)));
    const text = fitted(kit, name.trim(), widest, nameLook);
    const width = widthOf(kit, text, nameLook);
    const size = { width: width + 2 * pad, height: high * 1.3 + 2 * pad };
    const seen = span(box.x + 2, box.x + box.width - 2).flatMap((x) =>
      span(box.y + 2, box.y + box.height - 2).flatMap((y) =>
        isIn(rings, [x, y]) ? [[x, y] as Point] : [],
      ),
    );
    const middle = (axis: 0 | 1) => seen.reduce((sum, point) => sum + point[axis], 0) / seen.length;
    const [mx, my] = [middle(0), middle(1)];
    const off = ([x, y]: Point) => Math.hypot(x - mx, y - my);
    const found = seen
      .toSorted((a, b) => off(a) - off(b))
      .map(([x, y]) => ({ x: x - size.width / 2, y: y - size.height / 2, ...size }))
      .find(
        (one) =>
          rimOf(one).every((point) => isIn(rings, point) && isOnMap(box, point)) &&
          !taken.some((other) => overlap(one, other)),
      );
    if (!found) return [];
    taken.push(found);
    return [{ text, width, at: [found.x + pad, found.y + pad + high] }];
  });
}
