import type { AnnulusZone, Ring } from '../../../model/wellModel.ts';
import { hatchForFill } from '../../hatches/index.ts';
import type { Item } from '../../items.ts';
import { dashed, solid } from '../../pens.ts';
import { shownPart, yAt } from '../../scale.ts';
import { group, hatched, line, type Point } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { edgeAt, sides, type Side } from './across.ts';

/** The ring as it is cut on one side, within the depths that the page shows. */
function stripOf(view: View, side: Side, ring: Ring): Point[] | undefined {
  const part = shownPart(view.axis, ring.fromM, ring.toM);
  if (!part) return undefined;
  const inner = edgeAt(view, side, ring.innerMm);
  const outer = edgeAt(view, side, ring.outerMm);
  const top = yAt(view.axis, part.fromM);
  const foot = yAt(view.axis, part.toM);
  return [
    [inner, top],
    [outer, top],
    [outer, foot],
    [inner, foot],
  ];
}

/** Both sides of a ring, on white: nothing that lies under it may show through the hatch. */
function drawRing(view: View, zone: AnnulusZone, ring: Ring): Item[] {
  return sides.flatMap((side) => {
    const points = stripOf(view, side, ring);
    return points ? [hatched(points, hatchForFill(zone.fill), zone.path, '#ffffff')] : [];
  });
}

/** Contact lines at the top and foot of a zone, dashed where nobody wrote what stands there. */
function drawContacts(view: View, zone: AnnulusZone): Item[] {
  const stroke = zone.fill === 'unrecorded' ? dashed('thin') : solid('narrow');
  const ends = [
    { depthM: zone.fromM, ring: zone.rings[0] },
    { depthM: zone.toM, ring: zone.rings.at(-1) },
  ];
  return ends.flatMap(({ depthM, ring }) => {
    if (!ring || depthM < view.axis.fromM || depthM > view.axis.toM) return [];
    const y = yAt(view.axis, depthM);
    return sides.map((side) =>
      line(
        [edgeAt(view, side, ring.innerMm), y],
        [edgeAt(view, side, ring.outerMm), y],
        stroke,
        zone.path,
      ),
    );
  });
}

/** What stands between wall and casing, both sides, hatched. */
export function drawAnnulusFills(zones: readonly AnnulusZone[], view: View): Item {
  return group(
    'annulus',
    zones.map((zone) =>
      group(
        'annulusZone',
        [...zone.rings.flatMap((ring) => drawRing(view, zone, ring)), ...drawContacts(view, zone)],
        { source: zone.path },
      ),
    ),
  );
}
