import type { Headworks } from '../../../record/headworks.ts';
import { hatchForFill } from '../../hatches/index.ts';
import type { StringModel } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import { solid } from '../../pens.ts';
import { paperLength, shows, yAt } from '../../scale.ts';
import { corners, group, hatched, line, rectangle } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { centreOf, halfOf, sides } from './across.ts';

function outerHalf(view: View, strings: readonly StringModel[]): number {
  const outsides = strings.flatMap(({ pieces }) => pieces[0]?.outsideMm ?? []);
  return outsides.length > 0 ? halfOf(view, Math.max(...outsides)) : 0;
}

/** The pad either side of the casing, on the ground; its width is cut to the column. */
function drawPad(view: View, strings: readonly StringModel[], pad: Headworks): Item[] {
  if (pad.padThickness === undefined) return [];
  const height = Math.max(paperLength(pad.padThickness, view.axis.scale), 0.8);
  const y = yAt(view.axis, 0) - height;
  const inner = outerHalf(view, strings);
  const outer = view.columns.section.width / 2 - 1;
  return sides.flatMap((side) => {
    const near = centreOf(view) + side * inner;
    const far = centreOf(view) + side * outer;
    const box = { x: Math.min(near, far), y, width: Math.abs(far - near), height };
    return [
      hatched(corners(box), hatchForFill('concrete'), 'headworks', '#ffffff'),
      rectangle(box, { stroke: solid('narrow'), source: 'headworks' }),
    ];
  });
}

/** The ground line with the short slanted strokes under it, outside the well. */
function drawGroundLine(view: View, strings: readonly StringModel[], boreMm: number): Item[] {
  const y = yAt(view.axis, 0);
  const { section } = view.columns;
  const inner = Math.max(halfOf(view, boreMm), outerHalf(view, strings));
  return sides.flatMap((side) => {
    const near = centreOf(view) + side * inner;
    const far = centreOf(view) + side * (section.width / 2 - 0.3);
    const count = Math.max(0, Math.floor((Math.abs(far - near) - 0.8) / 1.1));
    const strokes = Array.from({ length: count }, (_, at) => {
      const x = Math.min(near, far) + 1.2 + at * 1.1;
      return line([x, y + 0.25], [x - 0.9, y + 1.4], solid('thin'));
    });
    return [line([near, y], [far, y], solid('wide')), ...strokes];
  });
}

/** Ground line and pad. */
export function drawSurface(
  strings: readonly StringModel[],
  headworks: Headworks | undefined,
  boreMm: number,
  view: View,
): Item {
  if (!shows(view.axis, 0, view.first)) return group('surface', []);
  return group('surface', [
    ...drawGroundLine(view, strings, boreMm),
    ...(headworks ? drawPad(view, strings, headworks) : []),
  ]);
}
