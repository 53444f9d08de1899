import type { PaperMm } from '../../../base/units.ts';
import type { Surrounding } from '../../../record/site.ts';
import type { PathItem } from '../../items.ts';
import { black, solid, white } from '../../pens.ts';
import { circle, line, polygon, polyline, rectangle, type Point } from '../../shapes.ts';

/** Half the side of the square that every sign stays in. */
export const signReach: PaperMm = 1.9;

const pen = solid('narrow');
const paper = { fill: white, stroke: pen } as const;
const ink = { fill: black } as const;

type Sign = (at: (right: PaperMm, down: PaperMm) => Point) => readonly PathItem[];

/** A hut with its open doorway. */
const latrine: Sign = (at) => [
  polygon([at(-1.5, -0.9), at(1.5, -1.7), at(1.5, 1.7), at(-1.5, 1.7)], paper),
  polygon([at(-0.5, -0.2), at(0.6, -0.2), at(0.6, 1.7), at(-0.5, 1.7)], ink),
];

/** Two chambers with the pipe between. */
const septicTank: Sign = (at) => [
  polygon([at(-1.9, -1.1), at(1.9, -1.1), at(1.9, 1.1), at(-1.9, 1.1)], paper),
  line(at(0.3, -1.1), at(0.3, 0), pen),
  line(at(0.3, 0.5), at(0.3, 1.1), pen),
];

/** A ring with stones in it. */
const soakaway: Sign = (at) => [
  circle(at(0, 0), 1.7, paper),
  ...[at(-0.7, -0.4), at(0.7, -0.4), at(0, 0.8)].map((stone) => circle(stone, 0.38, ink)),
];

/** A head with horns. */
const livestock: Sign = (at) => [
  polyline([at(-1.9, -1.7), at(-1.3, -0.8), at(1.3, -0.8), at(1.9, -1.7)], pen),
  polygon([at(-1.1, -0.8), at(1.1, -0.8), at(0.5, 1.8), at(-0.5, 1.8)], paper),
  circle(at(-0.45, -0.1), 0.25, ink),
  circle(at(0.45, -0.1), 0.25, ink),
];

/** Two mounds, each with its stone, over the ground. */
const graveyard: Sign = (at) => [
  line(at(-1.9, 1.6), at(1.9, 1.6), pen),
  ...[-1, 0.8].map((left) =>
    polygon(
      [
        at(left - 0.6, 1.6),
        at(left - 0.6, -0.8),
        at(left - 0.2, -1.4),
        at(left + 0.4, -1.4),
        at(left + 0.8, -0.8),
        at(left + 0.8, 1.6),
      ],
      paper,
    ),
  ),
];

/** A heap. */
const wasteDump: Sign = (at) => [
  polygon([at(-1.9, 1.5), at(-0.9, -0.5), at(0, 0.1), at(0.7, -1.4), at(1.9, 1.5)], ink),
];

/** A drum with its hoops. */
const fuelOrChemicals: Sign = (at) => [
  polygon([at(-1.2, -1.8), at(1.2, -1.8), at(1.2, 1.8), at(-1.2, 1.8)], paper),
  ...[-0.7, 0.7].map((down) => line(at(-1.2, down), at(1.2, down), solid('medium'))),
];

/** Three waves. */
const openWater: Sign = (at) =>
  [-1.1, 0, 1.1].map((down) =>
    polyline(
      [-1.9, -0.95, 0, 0.95, 1.9].map((right, step) => at(right, down + (step % 2 ? 0.35 : -0.35))),
      pen,
    ),
  );

/** A house: walls under a roof. */
const building: Sign = (at) => [
  polygon([at(-1.3, 1.6), at(-1.3, -0.2), at(1.3, -0.2), at(1.3, 1.6)], paper),
  polygon([at(-1.9, -0.2), at(0, -1.8), at(1.9, -0.2)], ink),
];

/** A ring over a cross; the well of the sheet has a dot in its ring. */
const well: Sign = (at) => [
  line(at(-1.9, 0), at(1.9, 0), pen),
  line(at(0, -1.9), at(0, 1.9), pen),
  circle(at(0, 0), 1.1, paper),
];

/** A square on its corner. */
const other: Sign = (at) => [polygon([at(0, -1.7), at(1.7, 0), at(0, 1.7), at(-1.7, 0)], paper)];

const signs: Readonly<Record<Surrounding['kind'], Sign>> = {
  latrine,
  septicTank,
  soakaway,
  livestock,
  graveyard,
  wasteDump,
  fuelOrChemicals,
  openWater,
  building,
  well,
  other,
};

/** The sign of what stands at a place, on white so that no line of the plan runs through it. */
export function surroundingSign(kind: Surrounding['kind'], [x, y]: Point): PathItem[] {
  const side = 2 * signReach;
  return [
    rectangle({ x: x - signReach, y: y - signReach, width: side, height: side }, { fill: white }),
    ...signs[kind]((right, down) => [x + right, y + down]),
  ];
}
