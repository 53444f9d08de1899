import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { depthFigure } from '../figures.ts';
import { letter, widthOf } from '../letters.ts';
import { chained, white } from '../pens.ts';
import { axisBottom } from '../scale.ts';
import { group, line, rectangle } from '../shapes.ts';
import type { View } from './columns.ts';

/** A chain line across the columns of the well, its words on the side away from the well. */
function drawOne(kit: Kit, view: View, y: number, text: string, above: boolean): Item[] {
  const { depth, ground, casing, fill } = view.columns;
  const baseline = above ? y - 1.1 : y + 3;
  const look = { face: 'bold', anchor: 'middle' } as const;
  const middle = (ground.x + ground.width + casing.x) / 2;
  const half = widthOf(kit, text, look) / 2 + 0.6;
  const x = Math.max(middle, depth.x + half + 0.6);
  const clear = { x: x - half, y: baseline - 2.3, width: 2 * half, height: 2.9 };
  return [
    line([depth.x, y], [fill.x + fill.width, y], chained('medium')),
    rectangle(clear, { fill: white }),
    ...letter(kit, text, x, baseline, look),
  ];
}

/** Match lines where the well is cut: the same depth stands at the foot of one page and the top of
 * the next. `sheet` counts from 1. */
export function drawMatchLines(kit: Kit, view: View, sheet: number): Item {
  const { words } = kit;
  const { axis } = view;
  const label = (depthM: number, where: string, other: number) =>
    `${words.matchLine} ${depthFigure(kit, depthM)} m, ${where} ${other}`;
  return group('matchLines', [
    ...(view.first
      ? []
      : drawOne(kit, view, axis.top, label(axis.fromM, words.continuedFrom, sheet - 1), true)),
    ...(view.last
      ? []
      : drawOne(kit, view, axisBottom(axis), label(axis.toM, words.continuedOn, sheet + 1), false)),
  ]);
}
