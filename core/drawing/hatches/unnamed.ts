import type { PathItem } from '../items.ts';
import { hatch, type Hatch } from './hatch.ts';
import * as mark from './marks.ts';
import { at, staggered } from './places.ts';

/** What the log says no more of than that it is rock, a hole, or unseen. Marks of our own. */

const crack = mark.strokes([
  [
    [-1.1, 0.5],
    [-0.3, -0.5],
    [0.2, 0.3],
    [1.1, -0.6],
  ],
]);

/** Corner to corner in dashes: nothing there. */
function dashedDiagonal(side: number, rising: boolean): PathItem[] {
  const steps = 3;
  const length = (side * Math.SQRT2) / steps;
  return Array.from({ length: steps }, (_, one) => {
    const along = ((one + 0.5) * side) / steps;
    const dash = mark.dash(length * 0.6, { turn: rising ? -45 : 45 });
    return mark.moved(dash, [along, rising ? side - along : along]);
  });
}

/** A question mark, 1.8 mm high. */
export const question: PathItem[] = [
  {
    kind: 'path',
    segments: [
      ['M', -0.45, -0.5],
      ['C', -0.45, -1.1, 0.5, -1.1, 0.5, -0.45],
      ['C', 0.5, 0, 0, -0.05, 0, 0.4],
    ],
    stroke: { ink: '#000000', width: 0.18 },
  },
  mark.moved(mark.dot(0.4), [0, 0.8]),
];

const box = mark.polygon(4, 1.4, { turn: 45 });

export const unnamed = {
  rock: hatch(
    6,
    6,
    staggered({ width: 6, height: 6 }, 2, 3).map((place, one) =>
      mark.moved(mark.turned(crack, (one % 3) * 60), place),
    ),
    crack,
  ),
  cavity: hatch(
    6,
    6,
    [...dashedDiagonal(6, true), ...dashedDiagonal(6, false)],
    mark.ring(1.8, 'hair'),
  ),
  noSample: hatch(
    6,
    6,
    question.flatMap((part) => at(staggered({ width: 6, height: 6 }, 1, 2), part)),
    ...question,
  ),
  other: hatch(6, 4, at(staggered({ width: 6, height: 4 }, 2, 2), box), box),
} satisfies Record<string, Hatch>;
