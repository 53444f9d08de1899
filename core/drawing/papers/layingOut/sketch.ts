import type { PaperMm } from '../../../base/units.ts';
import type { LevelModel, WellModel } from '../../../model/wellModel.ts';
import type { Box, Item } from '../../items.ts';
import { baseline, letter } from '../../letters.ts';
import { solid } from '../../pens.ts';
import type { View } from '../../parts/columns.ts';
import { layColumns, type Columns } from '../../parts/layColumns.ts';
import { drawDepthRuler } from '../../parts/depthRuler.ts';
import { drawGround } from '../../parts/ground.ts';
import { drawSection } from '../../parts/section/section.ts';
import { depthScales } from '../../scale.ts';
import { group, line } from '../../shapes.ts';
import { extentOf, widthScaleOf } from '../asBuilt/extent.ts';
import type { FillStep } from './fillSteps.ts';
import type { StringSteps } from './pipeSteps.ts';
import type { SheetKit } from './sheetKit.ts';
import { drawPipeNumbers, drawSketchLabels } from './sketchLabels.ts';

/**
 * Reductions of a sketch that has a part of a page only: those that metric scale rules bear
 * (common practice), then on as the sheets do.
 */
const sketchScales = [
  20,
  25,
  50,
  75,
  100,
  125,
  200,
  250,
  300,
  400,
  500,
  600,
  750,
  ...depthScales.filter((one) => one >= 1000),
];

/** Width of the sketch with ruler, ground, numbers of pipes and depths. */
export const sketchWidth: PaperMm = 62;
/** A sketch lower than this tells nothing. */
export const leastSketch: PaperMm = 75;
const titleHeight: PaperMm = 5;
const scaleHeight: PaperMm = 3.6;
const margin: PaperMm = 1.6;

function columnsAt(x: PaperMm): Columns {
  const fixed = (width: PaperMm) => ({ least: width, wanted: width });
  return layColumns(x, sketchWidth, {
    depth: fixed(7.8),
    ground: fixed(5.2),
    casing: fixed(6.2),
    section: fixed(13.3),
    fill: fixed(sketchWidth - 32.5),
  });
}

/** The latest rest level alone: what a well gives is not known before it is built. */
function restOnly(levels: readonly LevelModel[]): LevelModel[] {
  return levels.filter(({ state }) => state === undefined || state === 'static').slice(-1);
}

/** The view of the whole well in a box. */
function viewIn(model: WellModel, box: Box): View {
  const body = {
    x: box.x,
    y: box.y + titleHeight,
    width: sketchWidth,
    height: box.height - titleHeight - scaleHeight,
  };
  const shown = { ...model, levels: restOnly(model.levels), strikes: [], samples: [] };
  const { fromM, toM } = extentOf(shown);
  const room = body.height - 2 * margin;
  const scale =
    sketchScales.find((one) => ((toM - fromM) * 1000) / one <= room) ?? sketchScales.at(-1)!;
  const columns = columnsAt(box.x);
  const widthScale = widthScaleOf(model, columns.section.width - 2);
  return {
    axis: { fromM, toM, scale, top: body.y + margin },
    columns,
    body,
    ...(widthScale !== undefined && { widthScale }),
    first: true,
    last: true,
  };
}

function drawFrame(kit: SheetKit, { axis, body, widthScale }: View): Item[] {
  const { x, width } = body;
  const [head, foot] = [body.y, body.y + body.height];
  const { depth, width: across } = kit.words.scaleBars;
  const y = foot + baseline('small') + 0.3;
  return [
    group('columns', [
      line([x, head], [x + width, head], solid('medium')),
      line([x, foot], [x + width, foot], solid('narrow')),
    ]),
    ...letter(kit, kit.own.sketch, x, head - 1.3, {
      lettering: 'normal',
      face: 'bold',
      widest: width,
    }),
    ...letter(kit, `${depth} 1:${axis.scale}`, x, y, { face: 'bold', widest: width / 2 }),
    ...(widthScale === undefined
      ? []
      : letter(kit, `${across} 1:${widthScale}`, x + width, y, {
          anchor: 'end',
          widest: width / 2 - 2,
        })),
  ];
}

/** The well as it is to be, true to scale in depth, from the upper left corner of a box. */
export function drawSketch(
  kit: SheetKit,
  model: WellModel,
  strings: readonly StringSteps[],
  fills: readonly FillStep[],
  box: Box,
): Item {
  const view = viewIn(model, box);
  const { bore, annulus } = model;
  const built = { bore, strings: model.strings, annulus, levels: restOnly(model.levels) };
  return group('sketch', [
    drawGround(kit, model.strata, view),
    drawSection(kit, built, undefined, view),
    drawPipeNumbers(kit, strings, view),
    drawSketchLabels(kit, model, strings, fills, view),
    drawDepthRuler(kit, view),
    ...drawFrame(kit, view),
  ]);
}
