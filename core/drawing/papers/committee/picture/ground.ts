import type { PaperMm } from '../../../../base/units.ts';
import type { Headworks } from '../../../../record/headworks.ts';
import type { Item } from '../../../items.ts';
import { black, white } from '../../../pens.ts';
import { circle, group, line, polyline, rectangle } from '../../../shapes.ts';
import { halfHole, pen, type PictureFrame } from './frame.ts';

/** Shares of a cell at which its speck stands, in turn, so that rows do not line up. */
const shares = [0.2, 0.7, 0.45, 0.9, 0.3, 0.6] as const;
const cell: PaperMm = 6.5;

/** Specks in the earth on either side of the hole, left of what is written there. */
function specks({ x, middle, ground, y, height }: PictureFrame): Item[] {
  const right = middle + halfHole + 3;
  const items: Item[] = [];
  for (let row = 0; ground + 3 + row * cell < y + height - 2; row += 1) {
    for (let column = 0; x + (column + 1) * cell < right; column += 1) {
      const share = shares[(row * 2 + column) % shares.length]!;
      const at: readonly [PaperMm, PaperMm] = [
        x + (column + share) * cell,
        ground + 3 + (row + shares[(row + column * 3) % shares.length]! * 0.6) * cell,
      ];
      if (Math.abs(at[0] - middle) < halfHole + 1.4) continue;
      items.push(
        (row + column) % 3 === 0
          ? circle(at, 0.75, { stroke: pen(0.3) })
          : circle(at, 0.3, { fill: black }),
      );
    }
  }
  return items;
}

/** A fence behind the well. */
function fence({ x, width, middle, ground }: PictureFrame): Item[] {
  const from = middle + 17;
  const to = x + width - 1;
  const posts = Array.from({ length: Math.floor((to - from) / 8) + 1 }, (_, at) => from + at * 8);
  return [
    line([from - 2, ground - 3.4], [to, ground - 3.4], pen(0.6)),
    line([from - 2, ground - 7], [to, ground - 7], pen(0.6)),
    ...posts.map((post) =>
      rectangle(
        { x: post, y: ground - 9.6, width: 1.8, height: 9.6 },
        {
          stroke: pen(0.5),
          fill: white,
        },
      ),
    ),
  ];
}

/** The drain from the pad to a pit of stones with a plant beside it. */
function drain({ x, middle, ground }: PictureFrame): Item[] {
  const pit = x + 7;
  const stones = [-2.6, 0, 2.6].flatMap((dx) => [
    circle([pit + dx, ground + 2.2], 1.2, { stroke: pen(0.4), fill: white }),
    circle([pit + dx * 0.7, ground + 4.5], 1.1, { stroke: pen(0.4), fill: white }),
  ]);
  const leaf = (foot: PaperMm): Item => ({
    kind: 'path',
    segments: [
      ['M', x + 3, foot],
      ['C', x + 3 + 1, foot - 4, x + 3 + 4, foot - 5, x + 3 + 5.4, foot - 3.6],
      ['C', x + 3 + 4.6, foot - 1.4, x + 3 + 2, foot - 0.4, x + 3, foot],
      ['Z'],
    ],
    stroke: pen(0.4),
    fill: black,
  });
  return [
    line([middle - 16, ground - 0.4], [pit + 3.6, ground + 0.9], pen(1.4)),
    ...stones,
    line([x + 3, ground], [x + 3, ground - 9], pen(0.7)),
    leaf(ground - 8.2),
    leaf(ground - 4.2),
  ];
}

/** The surface of the ground, open over the hole, with what was built there and what lies under it. */
export function drawGround(frame: PictureFrame, built: Headworks): Item {
  const { x, width, middle, ground } = frame;
  const surface = [
    polyline(
      [
        [x, ground],
        [middle - halfHole, ground],
      ],
      pen(0.9),
    ),
    polyline(
      [
        [middle + halfHole, ground],
        [x + width, ground],
      ],
      pen(0.9),
    ),
  ];
  const around = [
    ...(built.fence === undefined ? [] : fence(frame)),
    ...(built.drainLength === undefined && built.soakaway === undefined ? [] : drain(frame)),
  ];
  return group('ground', [...specks(frame), ...surface, ...around]);
}
