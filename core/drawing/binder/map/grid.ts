import { angleLabel, graticuleLines, graticuleStep } from '../../../base/geo/graticule.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import { letter } from '../../letters.ts';
import { letterings, solid } from '../../pens.ts';
import { group, line } from '../../shapes.ts';
import type { BinderKit } from '../binder.ts';
import { fromPaper, toPaper, type MapView } from './view.ts';

const mostLines = 5;
export const tick: PaperMm = 1.2;

/** Longitude as it is told on a map, within half a turn. */
const onGlobe = (longitude: number) => longitude - 360 * Math.floor((longitude + 180) / 360);

/** Meridians and parallels, named at the upper and the left edge. */
export function drawGraticule(kit: BinderKit, view: MapView): Item {
  const { box } = view;
  const [left, right, top, foot] = [box.x, box.x + box.width, box.y, box.y + box.height];
  const [west, north] = fromPaper(view, [left, top]);
  const [east, south] = fromPaper(view, [right, foot]);
  const turned = east < west ? east + 360 : east;
  const step = graticuleStep(Math.max(turned - west, north - south), mostLines);
  const { compass } = kit.words;
  const meridians = graticuleLines(west, turned, step).flatMap((longitude): Item[] => {
    const [x] = toPaper(view, [onGlobe(longitude), south]);
    const side = onGlobe(longitude) < 0 ? compass.west : compass.east;
    const says = `${angleLabel(onGlobe(longitude), step)} ${side}`;
    return [
      line([x, top - tick], [x, foot], solid('hair')),
      ...letter(kit, says, x, top - tick - 0.6, { anchor: 'middle' }),
    ];
  });
  const parallels = graticuleLines(south, north, step).flatMap((latitude): Item[] => {
    const [, y] = toPaper(view, [west, latitude]);
    const side = latitude < 0 ? compass.south : compass.north;
    const says = `${angleLabel(latitude, step)} ${side}`;
    return [
      line([left - tick, y], [right, y], solid('hair')),
      ...letter(kit, says, left - tick - 0.6, y + letterings.small / 2, { anchor: 'end' }),
    ];
  });
  return group('graticule', [...meridians, ...parallels]);
}
