import { intervalsOf } from '../../model/strata.ts';
import type { Stratum } from '../../model/wellModel.ts';
import type { Material } from '../../record/materials.ts';
import { hatchFor, mixedHatch } from '../hatches/index.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { solid } from '../pens.ts';
import { shownPart, yAt } from '../scale.ts';
import { corners, group, hatched, line, rectangle } from '../shapes.ts';
import type { View } from './columns.ts';
import { drawContacts } from './contacts.ts';

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

function drawStratum(stratum: Stratum, view: View): Item[] {
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
  return [group('stratum', [fill], { source: stratum.path })];
}

/** The log as hatched boxes to scale, and over them the contact at the foot of each. */
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
  return group('ground', [
    ...shown.flatMap((one) => drawStratum(one, view)),
    ...drawContacts(kit, shown, view),
    ...cap,
  ]);
}
