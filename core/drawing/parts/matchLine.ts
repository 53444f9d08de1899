import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { depthFigure } from '../figures.ts';
import { letter } from '../letters.ts';
import { chained } from '../pens.ts';
import { axisBottom } from '../scale.ts';
import { group, line } from '../shapes.ts';
import type { View } from './columns.ts';

/** A chain line across the columns of the well, its words on the side away from the well. */
function drawOne(kit: Kit, view: View, y: number, text: string, above: boolean): Item[] {
  const { depth, fill, description } = view.columns;
  return [
    line([depth.x, y], [fill.x + fill.width, y], chained('medium')),
    ...letter(kit, text, description.x + description.width / 2, above ? y - 1.1 : y + 3, {
      face: 'bold',
      anchor: 'middle',
    }),
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
