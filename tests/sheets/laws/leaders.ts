import type { GroupItem, Page, PathItem } from '../../../core/drawing/items.ts';
import { boxOfText } from '../extent.ts';
import { groupsNamed, textsOn, type Extent } from '../placed.ts';
import { mm, type Law } from './law.ts';

type Point = readonly [number, number];

export interface Leg {
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

/** Whether two level lines lie on one another for more than half a millimetre. */
function lieTogether(one: Leg, other: Leg): boolean {
  const level = [one, other].every(({ from, to }) => Math.abs(from[1] - to[1]) < 1e-6);
  const [a, b] = [one, other].map(({ from, to }) => [from[0], to[0]].toSorted((x, y) => x - y));
  const shared = Math.min(a![1]!, b![1]!) - Math.max(a![0]!, b![0]!);
  return level && Math.abs(one.from[1] - other.from[1]) < 0.01 && shared > 0.5;
}

/** The straight strokes of an outline. */
export function strokesOf({ segments }: PathItem): Leg[] {
  const points = segments.map(([, x, y]) => [x, y] as Point);
  return points.slice(1).map((to, at) => ({ from: points[at]!, to }));
}

/** The leader of a label is its first outline; one end is at the part that it speaks of. */
function legsOf({ items }: GroupItem): Leg[] {
  const [leader] = items as readonly PathItem[];
  return strokesOf(leader!);
}

/** Labels with leaders: the words beside the section and those beside the log. */
const labels = { callouts: 'callout', descriptions: 'description' } as const;

function labelsIn({ items }: Page): GroupItem[][] {
  return Object.entries(labels).flatMap(([side, label]) =>
    groupsNamed(items, side).map((one) => groupsNamed(one.items, label)),
  );
}

function crossings(side: readonly GroupItem[]): string[] {
  const leaders = side.map((one) => ({ one, legs: legsOf(one) }));
  return leaders.flatMap(({ one, legs }, at) =>
    leaders
      .slice(at + 1)
      .filter((other) => legs.some((leg) => other.legs.some((another) => cross(leg, another))))
      .map((other) => `${one.source} crosses ${other.one.source} near ${mm(legs[0]!.from[1])}`),
  );
}

/** Leaders to two parts; those to an edge may end in the same edge. */
const ledToParts = (side: readonly GroupItem[]) =>
  side.filter(({ items }) => items.some((one) => one.kind === 'path' && one.fill));

/** Leaders on one side that run along one another, so that nobody sees which part is meant. */
function shared(side: readonly GroupItem[]): string[] {
  const leaders = ledToParts(side).map((one) => ({ one, legs: legsOf(one) }));
  return leaders.flatMap(({ one, legs }, at) =>
    leaders
      .slice(at + 1)
      .filter((other) => legs.some((leg) => other.legs.some((two) => lieTogether(leg, two))))
      .map((other) => `${one.source} shares its leader with ${other.one.source}`),
  );
}

/** No leader to a part lies on another's. */
export const leadersOwn: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) =>
    labelsIn(page)
      .flatMap(shared)
      .map((what) => `page ${at + 1}: ${what}`),
  );

/** Leaders on one side of the section or of the log do not cross. */
export const leadersApart: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) =>
    labelsIn(page)
      .flatMap(crossings)
      .map((what) => `page ${at + 1}: ${what}`),
  );

/** Whether a line runs through a box, and not only along its edge. */
export function runsThrough({ from, to }: Leg, [left, top, right, foot]: Extent): boolean {
  const slack = 0.05;
  const box = [left + slack, top + slack, right - slack, foot - slack] as const;
  const inside = ([x, y]: Point) => x > box[0] && x < box[2] && y > box[1] && y < box[3];
  const diagonals: Leg[] = [
    { from: [box[0], box[1]], to: [box[2], box[3]] },
    { from: [box[2], box[1]], to: [box[0], box[3]] },
  ];
  return inside(from) || inside(to) || diagonals.some((one) => cross(one, { from, to }));
}

function wordsStruck(page: Page): string[] {
  const texts = textsOn(page).map((one) => ({ ...one, box: boxOfText(one.item) }));
  const leaders = labelsIn(page).flat();
  return leaders.flatMap((leader) =>
    texts
      .filter(({ box }) => legsOf(leader).some((leg) => runsThrough(leg, box)))
      .map(({ item }) => `the leader of ${leader.source} strikes “${item.text}” at ${mm(item.y)}`),
  );
}

/** No leader runs through words, neither its own nor others'. */
export const leadersOffWords: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) => wordsStruck(page).map((what) => `page ${at + 1}: ${what}`));
