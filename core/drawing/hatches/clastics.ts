import type { PathItem } from '../items.ts';
import { hatch, type Hatch } from './hatch.ts';
import { level } from './lines.ts';
import * as mark from './marks.ts';
import { at, inTurn, scattered, staggered } from './places.ts';

/** Hardened sediments: the mark of the loose kind, with bedding. FGDC 600 series in words. */

const flat = { width: 6, height: 4 };

/** Bedding planes across the whole tile. */
function beds(width: number, ...depths: number[]): PathItem[] {
  return depths.map((y) => level(width, y, { pen: 'hair' }));
}

const twoDashes = mark.dashes(2, 1.5, 0.5);
const threeDots = [-0.7, 0, 0.7].map((x): [number, number] => [x, 0]);

function dashAndDots(x: number, y: number): PathItem[] {
  return [
    mark.moved(mark.dash(1.4), [x + 0.75, y]),
    ...threeDots.map(([dx]) => mark.moved(mark.dot(0.4), [x + 2.75 + dx, y])),
  ];
}

const shard = mark.strokes(
  [
    [
      [-0.9, 0.55],
      [-0.2, -0.75],
      [0.95, 0.3],
    ],
  ],
  { closed: true },
);
const smallShard = mark.polygon(3, 1.1);

/** As mud has it. */
const mudRipple = mark.ripple(1.7, 2, 0.3);

const shaleBreak = mark.dash(2.4);

export const clastics = {
  claystone: hatch(6, 4, at(staggered(flat, 2, 3), twoDashes), twoDashes),
  mudstone: hatch(
    6,
    3,
    [level(6, 0, { pen: 'narrow' }), ...at(staggered({ width: 6, height: 3 }, 2, 2), mudRipple)],
    mudRipple,
  ),
  siltstone: hatch(
    4,
    3,
    [...beds(4, 0), ...dashAndDots(0, 1), ...dashAndDots(2, 2)],
    mark.dash(1.4),
  ),
  shale: hatch(
    6,
    3,
    [
      ...beds(6, 0.5, 2),
      ...at(
        staggered({ width: 6, height: 3 }, 2, 2).map(([x, y]) => [x, y + 0.5] as const),
        shaleBreak,
      ),
    ],
    mark.dash(2.4),
  ),
  sandstone: hatch(
    6,
    3,
    [...beds(6, 0), ...at(staggered({ width: 6, height: 3 }, 4, 2), mark.dot())],
    mark.dot(0.5),
  ),
  conglomerate: hatch(
    6,
    6,
    [
      ...beds(6, 0, 3),
      ...inTurn(staggered({ width: 6, height: 6 }, 4, 4), [
        mark.ring(1.1),
        mark.dot(),
        mark.ring(0.8),
      ]),
    ],
    mark.ring(1.1),
  ),
  breccia: hatch(
    12,
    12,
    scattered({ width: 12, height: 12 }, 30, 22).map((place, one) =>
      mark.moved(mark.turned(one < 16 ? shard : smallShard, one * 77), place),
    ),
    shard,
  ),
} satisfies Record<string, Hatch>;
