import type { GroupItem, PathItem } from '../../../core/drawing/items.ts';
import { groupsNamed } from '../placed.ts';
import { mm, type Law } from './law.ts';

type Point = readonly [number, number];

interface Leg {
  readonly from: Point;
  readonly to: Point;
}

/** Twice the area of a triangle: above zero where c lies left of the way from a to b. */
function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Whether two lines cross in a point that is an end of neither. */
function cross(one: Leg, other: Leg): boolean {
  const sides = (leg: Leg, { from, to }: Leg) =>
    [turn(leg.from, leg.to, from), turn(leg.from, leg.to, to)] as const;
  const apart = ([a, b]: readonly [number, number]) =>
    Math.min(Math.abs(a), Math.abs(b)) > 1e-6 && Math.sign(a) !== Math.sign(b);
  return apart(sides(one, other)) && apart(sides(other, one));
}

/** The leader of a callout is its first outline; it ends at the part that it speaks of. */
function legsOf({ items }: GroupItem): Leg[] {
  const [leader] = items as readonly PathItem[];
  const points = leader!.segments.map(([, x, y]) => [x, y] as Point);
  return points.slice(1).map((to, at) => ({ from: points[at]!, to }));
}

function crossings(side: GroupItem): string[] {
  const leaders = groupsNamed(side.items, 'callout').map((one) => ({ one, legs: legsOf(one) }));
  return leaders.flatMap(({ one, legs }, at) =>
    leaders
      .slice(at + 1)
      .filter((other) => legs.some((leg) => other.legs.some((another) => cross(leg, another))))
      .map((other) => `${one.source} crosses ${other.one.source} near ${mm(legs[0]!.from[1])}`),
  );
}

/** Leaders on one side of the section do not cross. */
export const leadersApart: Law = ({ drawing }) =>
  drawing.pages.flatMap(({ items }, at) =>
    groupsNamed(items, 'callouts')
      .flatMap(crossings)
      .map((what) => `page ${at + 1}: ${what}`),
  );
