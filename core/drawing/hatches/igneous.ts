import { hatch, type Hatch } from './hatch.ts';
import { wavy } from './lines.ts';
import * as mark from './marks.ts';
import { alternating, at, scattered, staggered, tumbled } from './places.ts';

/** Rocks from the melt. FGDC 700 series in words; granite is random dashes there. */

const square = { width: 12, height: 12 };
const flat = { width: 6, height: 4 };

const shortDash = mark.dash(1.3);

const vee = mark.strokes([
  [
    [-0.5, -0.6],
    [0, 0.6],
    [0.5, -0.6],
  ],
]);

const wye = mark.strokes([
  [
    [-0.6, -0.7],
    [0, 0],
    [0.6, -0.7],
  ],
  [
    [0, 0],
    [0, 0.8],
  ],
]);

/** A feldspar lath: long, narrow, open. */
const lath = mark.strokes(
  [
    [
      [-0.85, -0.25],
      [0.85, -0.25],
      [0.85, 0.25],
      [-0.85, 0.25],
    ],
  ],
  { closed: true },
);

const curl = mark.ripple(2, 3, 0.4);
const flow = mark.ripple(2.4, 2, 0.3);
const cross = mark.plus(1.4);

/** A joint of a column, between two flow lines. */
function column(x: number, top: number, height: number) {
  return mark.moved(mark.dash(height, { turn: 90 }), [x, top + height / 2]);
}

export const igneous = {
  granite: hatch(12, 12, tumbled(scattered(square, 64, 31), shortDash, 32), shortDash),
  basalt: hatch(
    6,
    6,
    [
      wavy(6, 1, 4, 0.3),
      wavy(6, 4, 4, 0.3),
      ...[0.75, 3.75].map((x) => column(x, 0.75, 3)),
      ...[2.25, 5.25].map((x) => column(x, -2, 3.25)),
    ],
    mark.strokes([
      [
        [-0.8, -0.5],
        [0.8, -0.5],
      ],
      [
        [-0.4, -0.5],
        [-0.4, 0.7],
      ],
      [
        [0.4, -0.5],
        [0.4, 0.7],
      ],
    ]),
  ),
  dolerite: hatch(12, 12, tumbled(scattered(square, 36, 41), lath, 42), lath),
  andesite: hatch(6, 4, at(staggered(flat, 3, 2), vee), vee),
  rhyolite: hatch(6, 6, alternating({ width: 6, height: 6 }, 2, 4, [flow, mark.dot()]), flow),
  tuff: hatch(
    6,
    4,
    staggered(flat, 3, 2).map((place, one) =>
      mark.moved(one < 3 ? wye : mark.turned(wye, 180), place),
    ),
    wye,
  ),
  quartz: hatch(12, 12, tumbled(scattered(square, 26, 51), curl, 52), curl),
  igneousRock: hatch(
    4,
    4,
    at(
      [
        [1, 1],
        [3, 1],
        [1, 3],
        [3, 3],
      ],
      cross,
    ),
    cross,
  ),
} satisfies Record<string, Hatch>;
