import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { GroupItem } from '../../items.ts';
import { black, solid, white } from '../../pens.ts';
import { circle, group, line, polygon, type Point } from '../../shapes.ts';

/** How a reading is marked: told apart without colour. */
export const signs = ['ring', 'dot', 'cross', 'triangle'] as const;
export type Sign = (typeof signs)[number];

const radius: PaperMm = 0.65;

/** How far a sign reaches beyond its point, with half its line. */
export const signReach: PaperMm = 0.8;

const stroke = solid('thin');

/** A sign about its point. */
export function drawSign(sign: Sign, [x, y]: Point, source?: RecordPath): GroupItem {
  const shapes = {
    ring: () => [circle([x, y], radius, { stroke, fill: white, source })],
    dot: () => [circle([x, y], radius, { fill: black, source })],
    cross: () => [
      line([x - radius, y - radius], [x + radius, y + radius], stroke, source),
      line([x - radius, y + radius], [x + radius, y - radius], stroke, source),
    ],
    triangle: () => [
      polygon(
        [
          [x, y - radius],
          [x + radius, y + radius * 0.8],
          [x - radius, y + radius * 0.8],
        ],
        { stroke, source },
      ),
    ],
  };
  return group('sign', shapes[sign](), { source });
}
