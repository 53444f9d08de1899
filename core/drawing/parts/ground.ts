import type { Stratum } from '../../model/wellModel.ts';
import { hatchFor, mixedHatch } from '../hatches/index.ts';
import type { Item, Stroke } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { dashed, solid } from '../pens.ts';
import { shownPart, yAt } from '../scale.ts';
import { corners, group, hatched, line, rectangle } from '../shapes.ts';
import type { View } from './columns.ts';

/** The hatch of an interval: its material's, with its first second material's mark among it. */
export function hatchOf({ interval }: Stratum): string | undefined {
  const { material, qualifiers } = interval;
  if (material === undefined) return undefined;
  const second = qualifiers?.find((one) => one.degree !== 'slightly')?.material;
  return second === undefined || second === material
    ? hatchFor(material)
    : mixedHatch(material, second);
}

function contactStroke({ interval }: Stratum): Stroke {
  return interval.boundary === undefined || interval.boundary === 'sharp'
    ? solid('narrow')
    : dashed('narrow');
}

function drawStratum(kit: Kit, stratum: Stratum, view: View): Item[] {
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
  const doubt =
    stratum.interval.boundary === 'uncertain' && stratum.toM <= view.axis.toM
      ? letter(kit, '?', x + width - 1.6, foot - 0.4, { source: stratum.path })
      : [];
  return [group('stratum', [fill, contact, ...doubt], { source: stratum.path })];
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
  return group('ground', [...shown.flatMap((one) => drawStratum(kit, one, view)), ...cap]);
}
