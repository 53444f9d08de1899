import type { PathItem } from '../items.ts';
import type { Point } from '../shapes.ts';
import { hatch, type Hatch } from './hatch.ts';
import { leaning, level, upright } from './lines.ts';
import * as mark from './marks.ts';
import { at, staggered } from './places.ts';

/** Limestones and what came out of solution, with coal. FGDC 600 series in words. */

/** A joint between two courses, leaning by `lean` millimetres. */
function joint([x, top]: Point, height: number, lean = 0): PathItem {
  return mark.strokes([
    [
      [x + lean / 2, top],
      [x - lean / 2, top + height],
    ],
  ]);
}

/** Two courses of bricks. */
function bricks(lean: number): PathItem[] {
  return [
    level(4, 0.75),
    level(4, 2.25),
    joint([1, 0.75], 1.5, lean),
    joint([3, -0.75], 1.5, lean),
  ];
}

/** Two joints that cross: limestone remade. */
const crossedJoint = mark.strokes([
  [
    [-0.5, -0.75],
    [0.5, 0.75],
  ],
  [
    [0.5, -0.75],
    [-0.5, 0.75],
  ],
]);

/** One brick's corner: what is left of the courses in a mixture. */
function brickMark(lean: number): PathItem {
  return mark.strokes([
    [
      [-1, -0.5],
      [1, -0.5],
    ],
    [
      [lean / 2, -0.5],
      [-lean / 2, 0.6],
    ],
  ]);
}

/** A dash with an upright on it. */
const limyDash = mark.strokes([
  [
    [-0.9, 0.3],
    [0.9, 0.3],
  ],
  [
    [0, 0.3],
    [0, -0.55],
  ],
]);

const flat = { width: 6, height: 3 };

const solid: PathItem = mark.strokes(
  [
    [
      [-0.5, -0.5],
      [12.5, -0.5],
      [12.5, 12.5],
      [-0.5, 12.5],
    ],
  ],
  { filled: true, closed: true },
);

export const carbonates = {
  limestone: hatch(4, 3, bricks(0), brickMark(0)),
  dolomite: hatch(4, 3, bricks(1), brickMark(0.9)),
  chalk: hatch(
    6,
    3,
    [...at(staggered(flat, 1, 2), mark.dash(4.6)), joint([1.5, 0.75], 1.5)],
    brickMark(0),
  ),
  marl: hatch(
    6,
    3,
    [
      ...at(staggered({ width: 6, height: 3 }, 2, 2).slice(0, 2), limyDash),
      ...at(staggered({ width: 6, height: 3 }, 2, 2).slice(2), mark.dash(1.6)),
    ],
    limyDash,
  ),
  marble: hatch(
    4,
    3,
    [
      level(4, 0.75),
      level(4, 2.25),
      mark.moved(crossedJoint, [1, 1.5]),
      mark.moved(crossedJoint, [3, 0]),
    ],
    mark.dashes(2, 1.3, 0.5, { turn: 90 }),
  ),
  gypsum: hatch(6, 6, leaning(6, 6, 1.5, 6), mark.dash(1.8, { turn: -45 })),
  salt: hatch(
    6,
    6,
    [0.75, 2.25, 3.75, 5.25].flatMap((step) => [level(6, step), upright(6, step)]),
    mark.polygon(4, 1.6, { turn: 45 }),
  ),
  coal: hatch(12, 12, [solid], mark.oval(1.6, 0.7, { filled: true })),
} satisfies Record<string, Hatch>;
