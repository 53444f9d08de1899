import type { Headworks } from '../../../record/headworks.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { chained } from '../../pens.ts';
import { axisBottom } from '../../scale.ts';
import { group, line } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { centreOf } from './across.ts';
import { drawAnnulusFills } from './annulusFills.ts';
import type { Built } from './built.ts';
import { drawBoreWall } from './boreWall.ts';
import { drawCasing } from './casing.ts';
import { drawCentralisers } from './centralisers.ts';
import { drawPump } from './pump.ts';
import { drawSurface } from './surface.ts';
import { drawWaterLevels } from './waterLevels.ts';

/** The well in section, back to front: fills, wall of the hole, strings, pump, levels, surface. */
export function drawSection(
  kit: Kit,
  model: Built,
  headworks: Headworks | undefined,
  view: View,
): Item {
  const { bore, strings, annulus, levels, pump } = model;
  const { x, width } = view.columns.section;
  const clip = { x, y: view.body.y, width, height: view.body.height };
  const centre = line(
    [centreOf(view), view.axis.top],
    [centreOf(view), axisBottom(view.axis)],
    chained('hair'),
  );
  return group(
    'section',
    [
      drawAnnulusFills(annulus, view),
      centre,
      drawBoreWall(kit, bore, view),
      ...strings.map((one) => drawCasing(one, view)),
      ...strings.map((one) => drawCentralisers(one, strings, bore, view)),
      drawPump(pump, strings, view),
      drawWaterLevels(levels, strings, view),
      drawSurface(strings, headworks, bore.sections[0]?.diameterMm ?? 0, view),
    ],
    { clip },
  );
}
