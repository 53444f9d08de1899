import type { PumpModel, StringModel } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import { black, chained, solid, white } from '../../pens.ts';
import { shownPart, shows, yAt } from '../../scale.ts';
import { group, line, polygon, rectangle } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { centreOf, halfOf, sides } from './across.ts';

/** The riser as two lines to scale; where its diameter is unknown, a chained centre line. */
function drawRiser(view: View, pump: PumpModel, topM: number, footM: number): Item[] {
  const part = shownPart(view.axis, topM, footM);
  if (!part) return [];
  const top = yAt(view.axis, part.fromM);
  const foot = yAt(view.axis, part.toM);
  const centre = centreOf(view);
  if (pump.riserMm === undefined)
    return [line([centre, top], [centre, foot], chained('narrow'), pump.path)];
  const half = halfOf(view, pump.riserMm);
  return sides.map((side) =>
    line([centre + side * half, top], [centre + side * half, foot], solid('thin'), pump.path),
  );
}

function drawBody(view: View, pump: PumpModel, topM: number, footM: number): Item[] {
  const part = shownPart(view.axis, topM, footM);
  if (!part) return [];
  const half = pump.bodyMm === undefined ? 1.1 : halfOf(view, pump.bodyMm);
  const y = yAt(view.axis, part.fromM);
  const height = Math.max(yAt(view.axis, part.toM) - y, 1);
  const box = { x: centreOf(view) - half, y, width: 2 * half, height };
  return [rectangle(box, { fill: white, stroke: solid('medium'), source: pump.path })];
}

/** The intake: a small arrow head that points up into the pump. */
function drawIntake(view: View, pump: PumpModel): Item[] {
  const depthM = pump.intakeM;
  if (depthM === undefined || !shows(view.axis, depthM, view.first)) return [];
  const y = yAt(view.axis, depthM);
  const x = centreOf(view);
  return [
    polygon(
      [
        [x, y],
        [x - 0.9, y + 1.6],
        [x + 0.9, y + 1.6],
      ],
      { fill: black, source: `${pump.path}.intake` },
    ),
  ];
}

/** Pump and riser inside the innermost string, from its top to the intake. */
export function drawPump(
  pump: PumpModel | undefined,
  strings: readonly StringModel[],
  view: View,
): Item {
  const footM = pump?.intakeM;
  if (!pump || footM === undefined) return group('pump', []);
  const topM = Math.min(0, ...strings.map((one) => one.topM));
  const bodyTop = pump.cylinderTopM ?? footM;
  return group(
    'pump',
    [
      ...drawRiser(view, pump, topM, Math.min(bodyTop, footM)),
      ...(bodyTop < footM ? drawBody(view, pump, bodyTop, footM) : []),
      ...drawIntake(view, pump),
    ],
    { source: pump.path },
  );
}
