import { hatch, type Hatch } from './hatch.ts';
import * as mark from './marks.ts';
import type { Point } from '../shapes.ts';
import { alternating, at, jittered, scattered, shared, staggered, tumbled } from './places.ts';

/** Loose ground. Conventions in words: FGDC-STD-013-2006, 600 series; drawn anew. */

const square = { width: 12, height: 12 };
const half = { width: 6, height: 6 };

const tuft = mark.strokes([
  [
    [0, 0.6],
    [-0.55, -0.5],
  ],
  [
    [0, 0.6],
    [0, -0.75],
  ],
  [
    [0, 0.6],
    [0.55, -0.5],
  ],
]);

const cross = mark.plus(1.3, { turn: 45 });
const bigCross = mark.plus(2, { turn: 45 });
/** Crosses of two sizes, turned anyhow. */
function tumbledCrosses(places: readonly Point[]) {
  return [...tumbled(places.slice(0, 10), bigCross, 4), ...tumbled(places.slice(10), cross, 5)];
}

const clayDash = mark.dash(1.5);

const siltRow = [mark.dash(1.4), ...[-0.7, 0, 0.7].map((x) => mark.moved(mark.dot(0.4), [x, 0]))];

/** A dash over a dot: silt in a mixture. */
const siltSingle = [mark.moved(mark.dash(1.2), [0, -0.3]), mark.moved(mark.dot(0.4), [0, 0.4])];

/** A dash and three dots, from a row's start. */
function siltMarks(x: number, y: number) {
  const [dash, ...dots] = siltRow;
  return [mark.moved(dash!, [x + 0.75, y]), ...dots.map((dot) => mark.moved(dot, [x + 2.75, y]))];
}

const pebble = mark.ring(1.1);
const cobble = mark.oval(2.6, 1.8);
const earth = mark.dashes(3, 1.3, 0.45, { turn: -45 });

/** A stone, not quite regular. */
function boulder(size: number, turn: number) {
  const corners = [
    [-0.55, -0.2],
    [-0.3, -0.5],
    [0.3, -0.48],
    [0.55, -0.05],
    [0.4, 0.4],
    [-0.15, 0.45],
    [-0.5, 0.3],
  ] as const;
  return mark.rounding(
    corners.map(([x, y]) => [x * size, y * size] as const),
    { turn },
  );
}

const lump = mark.oval(1.1, 0.6, { filled: true });
const slanted = mark.dash(1.3, { turn: -45 });
const mudRipple = mark.ripple(1.9, 2, 0.35);
const upright = mark.ripple(1.5, 2, 0.25, { turn: 90 });

const drifted = mark.oval(2, 1.3, { turn: 20 });

const grains = jittered(staggered(half, 4, 4), 0.3, 11);

export const soils = {
  topsoil: hatch(6, 4, at(staggered({ width: 6, height: 4 }, 2, 2), tuft), tuft),
  madeGround: hatch(12, 12, tumbledCrosses(scattered(square, 32, 3)), cross),
  clay: hatch(6, 4, at(staggered({ width: 6, height: 4 }, 2, 4), clayDash), clayDash),
  silt: hatch(4, 3, [...siltMarks(0, 0.75), ...siltMarks(2, 2.25)], ...siltSingle),
  sand: hatch(6, 6, at(grains, mark.dot()), mark.dot(0.5)),
  gravel: hatch(
    6,
    6,
    shared(scattered(half, 20, 5), [
      [7, pebble],
      [13, mark.dot()],
    ]),
    pebble,
  ),
  cobbles: hatch(
    12,
    12,
    [
      ...staggered(square, 3, 5).flatMap((place, one) =>
        at([place], mark.turned(cobble, (one % 5) * 14 - 28)),
      ),
    ],
    cobble,
  ),
  boulders: hatch(
    12,
    12,
    [
      mark.moved(boulder(5.2, 0), [3, 3]),
      mark.moved(boulder(4.6, 70), [9.2, 2.6]),
      mark.moved(boulder(4.8, 200), [6.2, 8.4]),
      mark.moved(boulder(3.4, 120), [11.4, 7.4]),
      ...at(
        [
          [6.1, 5],
          [2.4, 7.3],
          [9.4, 10.8],
          [2.8, 10.6],
        ],
        mark.ring(0.9),
      ),
    ],
    boulder(2.6, 30),
  ),
  peat: hatch(6, 6, alternating(half, 3, 4, [lump, slanted, mark.dash(1.2)]), lump),
  mud: hatch(6, 4, at(staggered({ width: 6, height: 4 }, 2, 3), mudRipple), mudRipple),
  loess: hatch(6, 4, at(staggered({ width: 6, height: 4 }, 4, 2), upright), upright),
  diamicton: hatch(
    12,
    12,
    shared(scattered(square, 56, 8), [
      [8, drifted],
      [8, mark.ring(0.9)],
      [20, mark.dash(1.1)],
      [20, mark.dot()],
    ]),
    drifted,
  ),
  soil: hatch(
    6,
    4,
    staggered({ width: 6, height: 4 }, 2, 2).map((place, one) =>
      mark.moved(mark.turned(earth, one < 2 ? 0 : 90), place),
    ),
    earth,
  ),
} satisfies Record<string, Hatch>;
