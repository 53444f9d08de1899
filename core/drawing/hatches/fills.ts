import type { FillKind } from '../../record/annulus.ts';
import { hatch, type Hatch } from './hatch.ts';
import { leaning } from './lines.ts';
import * as mark from './marks.ts';
import { alternating, at, jittered, shared, scattered, staggered } from './places.ts';
import { question } from './unnamed.ts';

/** What stands in the annulus: close marks, since they are seen in strips of 2 to 5 mm. */

const small = { width: 4, height: 4 };
const square = { width: 12, height: 12 };
const half = { width: 6, height: 6 };

const grain = mark.ring(0.9);

const triangle = mark.polygon(3, 1);
const stone = mark.polygon(3, 1.5);
const fall = mark.strokes([
  [
    [-0.5, -0.25],
    [0, 0.35],
    [0.5, -0.25],
  ],
]);
const cross = mark.plus(0.9, { turn: 45 });
const sealDash = mark.dash(1.1, { pen: 'narrow', turn: -45 });

export const fills: Readonly<Record<FillKind | 'unrecorded', Hatch>> = {
  gravelPack: hatch(4, 4, at(jittered(staggered(small, 4, 4), 0.03, 61), grain), grain),
  formationStabiliser: hatch(4, 4, alternating(small, 2, 4, [mark.ring(0.9), mark.dot()]), grain),
  claySeal: hatch(4, 4, at(staggered(small, 3, 4), sealDash), sealDash),
  bentonite: hatch(
    4,
    4,
    [...leaning(4, 4, 1, 4), ...leaning(4, 4, 1, -4)],
    mark.plus(1.2, { turn: 45 }),
  ),
  cementGrout: hatch(
    6,
    6,
    shared(scattered(half, 30, 71), [
      [11, triangle],
      [19, mark.dot(0.4)],
    ]),
    triangle,
  ),
  concrete: hatch(
    6,
    6,
    shared(scattered(half, 19, 81), [
      [6, stone],
      [5, mark.ring(0.8)],
      [8, mark.dot()],
    ]),
    stone,
  ),
  backfill: hatch(
    12,
    12,
    shared(scattered(square, 52, 91), [
      [14, cross],
      [10, mark.dash(1)],
      [10, mark.dash(1, { turn: 60 })],
      [18, mark.dot()],
    ]),
    cross,
  ),
  naturalCollapse: hatch(4, 4, alternating(small, 2, 4, [fall, mark.dot()]), fall),
  open: hatch(4, 4, []),
  unrecorded: hatch(
    4,
    4,
    question.flatMap((part) =>
      at(
        [
          [1, 1.4],
          [3, 3.4],
        ],
        part,
      ),
    ),
    ...question,
  ),
};
