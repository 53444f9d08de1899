import type { PaperMm } from '../../../base/units.ts';
import { filled } from '../../../base/text/filled.ts';
import { plainFigure, significantFigure } from '../../figures.ts';
import type { Box, Item } from '../../items.ts';
import { baseline, letter, widthOf } from '../../letters.ts';
import { chained, lineHeight, solid, white } from '../../pens.ts';
import { group, line, rectangle } from '../../shapes.ts';
import type { Piece } from '../../parts/flow/flow.ts';
import type { BinderKit } from '../binder.ts';
import { medianOf } from '../statistics.ts';
import { classesOf } from './classes.ts';

export interface Distribution {
  readonly title: string;
  readonly unit: string;
  readonly values: readonly number[];
  /** Of how many wells the value could be known. */
  readonly wells: number;
}

const plotHeight: PaperMm = 58;
const headHeight = 2 * lineHeight('small') + 5;
const footHeight: PaperMm = 8;
const widestBar: PaperMm = 16;

function saysOf({ own }: BinderKit, { values, wells }: Distribution): string {
  return filled(own.plots.known, { n: String(values.length), of: String(wells) });
}

/** Bars with their counts over them, the bounds of the classes under them, and the median. */
function drawBars(kit: BinderKit, { values, unit }: Distribution, box: Box): Item[] {
  const classes = classesOf(values);
  const most = classes.reduce((a, { count }) => Math.max(a, count), 1);
  const width = Math.min(widestBar, (box.width - 24) / classes.length);
  const foot = box.y + box.height;
  const step = classes[0]!.to;
  const xOf = (value: number) => box.x + (value / step) * width;
  const heightOf = (count: number) => (count / most) * (box.height - 4);
  const median = medianOf(values)!;
  const right = xOf(classes.at(-1)!.to);
  const bars = classes.flatMap(({ from, count }): Item[] => {
    if (count === 0) return [];
    const height = heightOf(count);
    const bar = { x: xOf(from), y: foot - height, width, height };
    return [rectangle(bar, { stroke: solid('narrow'), fill: '#d8d8d8' })];
  });
  // On white, so that the line of the median does not run through a count.
  const figures = classes.flatMap(({ from, count }): Item[] => {
    if (count === 0) return [];
    const [middle, top] = [xOf(from) + width / 2, foot - heightOf(count)];
    const says = String(count);
    const wide = widthOf(kit, says) + 0.6;
    const ground = { x: middle - wide / 2, y: top - 3, width: wide, height: 2.6 };
    return [
      rectangle(ground, { fill: white }),
      ...letter(kit, says, middle, top - 0.8, { anchor: 'middle' }),
    ];
  });
  const bounds = [0, ...classes.map(({ to }) => to)].flatMap((bound): Item[] => [
    line([xOf(bound), foot], [xOf(bound), foot + 1.2], solid('thin')),
    ...letter(kit, plainFigure(kit, bound, 3), xOf(bound), foot + 1.4 + baseline('small'), {
      anchor: 'middle',
    }),
  ]);
  const medianX = xOf(median);
  return [
    ...bars,
    line([box.x, foot], [right, foot], solid('narrow')),
    ...bounds,
    ...letter(kit, unit, right + 8, foot + 1.4 + baseline('small')),
    line([medianX, box.y - 2], [medianX, foot], chained('narrow')),
    ...figures,
  ];
}

/** A distribution with its counts; a sentence where no value is known. */
export function histogramPiece(kit: BinderKit, of: Distribution, width: PaperMm): Piece {
  const { title, unit, values } = of;
  const median = medianOf(values);
  const says = [
    saysOf(kit, of),
    ...(median === undefined
      ? []
      : [filled(kit.own.plots.median, { value: `${significantFigure(kit, median)} ${unit}` })]),
  ].join(' ');
  const height = headHeight + (median === undefined ? 0 : plotHeight + footHeight) + 4;
  return {
    height,
    draw: (x, y) => {
      const bars = { x: x + 4, y: y + headHeight + 2, width: width - 4, height: plotHeight };
      return [
        group('histogram', [
          ...letter(kit, title, x, y + baseline('normal'), { lettering: 'normal', face: 'bold' }),
          ...letter(kit, says, x, y + lineHeight('normal') + baseline('small'), { widest: width }),
          ...(median === undefined ? [] : drawBars(kit, of, bars)),
        ]),
      ];
    },
  };
}
