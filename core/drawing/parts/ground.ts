import type { PaperMm } from '../../base/units.ts';
import { intervalsOf } from '../../model/strata.ts';
import type { Stratum } from '../../model/wellModel.ts';
import type { Material } from '../../record/materials.ts';
import { hatchFor, mixedHatch } from '../hatches/index.ts';
import type { Item, Stroke } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { dashed, letterings, lineHeight, solid } from '../pens.ts';
import { shownPart, yAt } from '../scale.ts';
import { corners, group, hatched, line, rectangle } from '../shapes.ts';
import type { View } from './columns.ts';

/** The materials of all that the log says of a stratum, each once. */
export function materialsOf(stratum: Stratum): Material[] {
  return [...new Set(intervalsOf(stratum).flatMap(({ material }) => material ?? []))];
}

/**
 * The hatch of a stratum: its material's, with the mark of a second among it. That is the next
 * interval's of the same range, else the first of its own second materials.
 */
export function hatchOf(stratum: Stratum): string | undefined {
  const [material, other] = materialsOf(stratum);
  if (material === undefined) return undefined;
  const { qualifiers } = stratum.interval;
  const second = other ?? qualifiers?.find((one) => one.degree !== 'slightly')?.material;
  return second === undefined ? hatchFor(material) : mixedHatch(material, second);
}

function contactStroke({ interval }: Stratum): Stroke {
  return interval.boundary === undefined || interval.boundary === 'sharp'
    ? solid('narrow')
    : dashed('narrow');
}

/** Room that the sign of a doubtful contact takes, across and down. */
const doubtWidth: PaperMm = 1.6;
const doubtHeight: PaperMm = lineHeight('small');

/**
 * Which place from the right the sign of each doubtful contact takes: the next one to the left
 * where the contact above is too near for signs under each other.
 */
function doubtPlaces(strata: readonly Stratum[], view: View): Map<Stratum, number> {
  const places = new Map<Stratum, number>();
  let [lastY, place] = [-Infinity, 0];
  for (const stratum of strata) {
    if (stratum.interval.boundary !== 'uncertain' || stratum.toM > view.axis.toM) continue;
    const y = doubtBaseline(view, stratum);
    place = y - lastY < doubtHeight ? place + 1 : 0;
    lastY = y;
    if ((place + 1) * doubtWidth < view.columns.ground.width) places.set(stratum, place);
  }
  return places;
}

/** Just above the contact; under the body's upper edge where the layer is thinner than the sign. */
function doubtBaseline({ axis, body }: View, { toM }: Stratum): PaperMm {
  return Math.max(yAt(axis, toM) - 0.4, body.y + letterings.small + 0.3);
}

function drawStratum(kit: Kit, stratum: Stratum, view: View, doubt: number | undefined): Item[] {
  const part = shownPart(view.axis, stratum.fromM, stratum.toM);
  if (!part) return [];
  const { x, width } = view.columns.ground;
  const y = yAt(view.axis, part.fromM);
  const foot = yAt(view.axis, part.toM);
  const box = { x, y, width, height: foot - y };
  const hatch = hatchOf(stratum);
  const fill = hatch
    ? hatched(corners(box), hatch, stratum.path, '#ffffff')
    : rectangle(box, { fill: '#ffffff', source: stratum.path });
  const contact = line([x, foot], [x + width, foot], contactStroke(stratum), stratum.path);
  const sign =
    doubt === undefined
      ? []
      : letter(kit, '?', x + width - (doubt + 1) * doubtWidth, doubtBaseline(view, stratum), {
          source: stratum.path,
        });
  return [group('stratum', [fill, contact, ...sign], { source: stratum.path })];
}

/** The log as hatched boxes to scale, each with the contact at its foot. */
export function drawGround(kit: Kit, strata: readonly Stratum[], view: View): Item {
  const { x, width } = view.columns.ground;
  const shown = strata.filter(({ fromM, toM }) => shownPart(view.axis, fromM, toM));
  const top = shown[0];
  const cap = top
    ? [
        line(
          [x, yAt(view.axis, Math.max(top.fromM, view.axis.fromM))],
          [x + width, yAt(view.axis, Math.max(top.fromM, view.axis.fromM))],
          solid('narrow'),
        ),
      ]
    : [];
  const doubts = doubtPlaces(shown, view);
  return group('ground', [
    ...shown.flatMap((one) => drawStratum(kit, one, view, doubts.get(one))),
    ...cap,
  ]);
}
