import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { depthFigure } from '../figures.ts';
import { letter, widthOf } from '../letters.ts';
import { chained, white } from '../pens.ts';
import { axisBottom } from '../scale.ts';
import { group, line, rectangle } from '../shapes.ts';
import type { View } from './columns.ts';

function drawOne(kit: Kit, view: View, y: number, text: string, above: boolean): Item[] {
  const { columns } = view;
  const left = columns.depth.x;
  const right = columns.fill.x + columns.fill.width;
  const width = widthOf(kit, text, { face: 'bold' }) + 1.6;
  const x = columns.description.x + columns.description.width - width;
  const baseline = above ? y - 0.9 : y + 2.7;
  return [
    line([left, y], [right, y], chained('medium')),
    rectangle({ x, y: baseline - 2.1, width, height: 2.7 }, { fill: white }),
    ...letter(kit, text, x + 0.8, baseline, { face: 'bold' }),
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
      : drawOne(kit, view, axis.top, label(axis.fromM, words.continuedFrom, sheet - 1), false)),
    ...(view.last
      ? []
      : drawOne(kit, view, axisBottom(axis), label(axis.toM, words.continuedOn, sheet + 1), true)),
  ]);
}
