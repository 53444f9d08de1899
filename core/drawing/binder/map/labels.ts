import type { PaperMm } from '../../../base/units.ts';
import { fitted, widthOf } from '../../letters.ts';
import { placeLedLabels } from '../../map/labels.ts';
import { letterings } from '../../pens.ts';
import type { Point } from '../../shapes.ts';
import type { BinderKit } from '../binder.ts';
import { sayVillage } from '../say.ts';
import type { PlacedWell } from './placedWell.ts';
import { isOnMap, toPaper, type MapView } from './view.ts';

/** From the middle of a sign to its label. */
const gap: PaperMm = 2;
const widest: PaperMm = 34;
const pad: PaperMm = 0.4;
const height: PaperMm = letterings.small * 1.3 + 2 * pad;

export interface MapLabel {
  readonly well: PlacedWell;
  readonly point: Point;
  readonly text: string;
  /** The map is made for this well; others show that stand on it as well. */
  readonly own: boolean;
  /** Left end of its baseline and its width; absent where there is no room. */
  readonly at?: Point;
  readonly width: PaperMm;
  /** From its sign to a label that stands off it. */
  readonly leader?: readonly [from: Point, to: Point];
}

/** Signs of a map with their labels; those of `own` wells find room first. */
export function mapLabels(
  kit: BinderKit,
  view: MapView,
  own: readonly PlacedWell[],
  others: readonly PlacedWell[] = [],
): MapLabel[] {
  const { box } = view;
  const shown = [...own, ...others]
    .map((well) => ({ well, point: toPaper(view, well.position) }))
    .filter(({ point }) => isOnMap(box, point));
  const mine = new Set(own);
  const ownShown = shown.filter(({ well }) => mine.has(well)).length;
  const texts = shown.map(({ well }) =>
    fitted(kit, well.number === '' ? sayVillage(kit, well.village) : well.number, widest),
  );
  const widths = texts.map((text) => widthOf(kit, text));
  const signs = shown.map(({ point: [x, y] }, at) => ({
    x: x - box.x,
    y: y - box.y,
    width: widths[at]! + 2 * pad,
    height,
  }));
  const frame = { width: box.width, height: box.height };
  const places = placeLedLabels(signs, { gap, frame }, ownShown);
  return shown.map(({ well, point }, at) => {
    const place = places[at];
    const label = { well, point, text: texts[at]!, width: widths[at]!, own: mine.has(well) };
    if (!place) return label;
    const base = box.y + place.y + pad + letterings.small * 1.02;
    const { leader } = place;
    const onPage = ([x, y]: Point): Point => [box.x + x, box.y + y];
    return {
      ...label,
      at: [box.x + place.x + pad, base],
      ...(leader && { leader: [onPage(leader[0]), onPage(leader[1])] as const }),
    };
  });
}
