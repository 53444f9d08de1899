import type { MapShape } from '../../../base/geo/shapes.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Box } from '../../items.ts';
import { fitted, widthOf } from '../../letters.ts';
import { letterings } from '../../pens.ts';
import type { Point } from '../../shapes.ts';
import type { BinderKit } from '../binder.ts';
import { isSeen, thinned } from './backdrop.ts';
import type { MapLabel } from './labels.ts';
import { isOnMap, toPaper, type MapView } from './view.ts';
import { signHalf } from './wellSign.ts';

/** The name of an outline on a map: left end of its baseline, and its width. */
export interface OutlineName {
  readonly text: string;
  readonly at: Point;
  readonly width: PaperMm;
  readonly lettering: 'normal' | 'small';
}

const widest: PaperMm = 70;
const pad: PaperMm = 1;
/** Between two places where a name is tried. */
const step: PaperMm = 4;

type Rings = readonly (readonly Point[])[];

/** Whether a point lies in rings, by the count of their edges to its right; holes lie outside. */
function isIn(rings: Rings, [x, y]: Point): boolean {
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

/** Places all over what a map shows of an outline, those nearest to the middle of that first. */
function placesIn(rings: Rings, { x, y, width, height }: Box): Point[] {
  const reach = (axis: 0 | 1) => {
    const values = rings.flatMap((ring) => ring.map((point) => point[axis]));
    return [values.reduce((a, b) => Math.min(a, b)), values.reduce((a, b) => Math.max(a, b))];
  };
  const [[west, east], [north, south]] = [reach(0), reach(1)] as [number[], number[]];
  const across = span(Math.max(x, west!), Math.min(x + width, east!));
  const down = span(Math.max(y, north!), Math.min(y + height, south!));
  const seen = across.flatMap((px) => down.map((py): Point => [px, py]));
  const within = seen.filter((point) => isIn(rings, point));
  const middle = (axis: 0 | 1) =>
    within.reduce((sum, point) => sum + point[axis], 0) / within.length;
  const [mx, my] = [middle(0), middle(1)];
  const off = ([px, py]: Point) => Math.hypot(px - mx, py - my);
  return within.sort((a, b) => off(a) - off(b));
}

/** Smaller letters where larger ones find no room. */
const sizes = ['normal', 'small'] as const;

/** A name in its outline, and the box that it takes up. */
function named(
  kit: BinderKit,
  box: Box,
  { name, rings }: { readonly name: string; readonly rings: Rings },
  isFree: (room: Box) => boolean,
): { readonly found: OutlineName; readonly room: Box } | undefined {
  const places = placesIn(rings, box);
  for (const lettering of sizes) {
    const look = { lettering, face: 'bold' } as const;
    const text = fitted(kit, name, widest, look);
    const width = widthOf(kit, text, look);
    const size = { width: width + 2 * pad, height: letterings[lettering] * 1.3 + 2 * pad };
    const room = places
      .map(([x, y]) => ({ x: x - size.width / 2, y: y - size.height / 2, ...size }))
      .find(
        (one) =>
          isFree(one) && rimOf(one).every((point) => isOnMap(box, point) && isIn(rings, point)),
      );
    if (!room) continue;
    const at = [room.x + pad, room.y + pad + letterings[lettering]] as const;
    return { found: { text, width, at, lettering }, room };
  }
  return undefined;
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
  const taken = [...takenBy(labels, more.named), ...more.taken];
  const isFree = (room: Box) => !taken.some((other) => overlap(room, other));
  return shapes.flatMap(({ name = '', closed, lines }): OutlineName[] => {
    if (!closed || name.trim() === '') return [];
    const rings = lines.map((line) => thinned(line.map((place) => toPaper(view, place))));
    if (!rings.some((ring) => isSeen(view, ring))) return [];
    const placed = named(kit, view.box, { name: name.trim(), rings }, isFree);
    if (!placed) return [];
    taken.push(placed.room);
    return [placed.found];
  });
}
