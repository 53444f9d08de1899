import metrics from '../../assets/fonts/metrics.json' with { type: 'json' };
import { textWidth, type Fonts } from '../../core/base/text/metrics.ts';
import { placeLabels } from '../../core/drawing/map/labels.ts';
import type { MapWell } from '../../core/contract/listShape.ts';
import type { ScreenPoint, Sight } from './mapScene.ts';
import { shownWell } from './shown.ts';

const fonts: Fonts = metrics;

/** Size of the letters on the map, pixels. */
export const letters = 12;
/** From a sign's middle to its label. */
const gap = 9;
/** With more wells in sight hardly a label would find room. */
const most = 1500;

/** A well where it stands in the window. */
export interface SeenWell extends ScreenPoint {
  readonly well: MapWell;
}

export interface WellLabel extends ScreenPoint {
  readonly id: string;
  readonly text: string;
}

export const labelWidth = (text: string) => textWidth(fonts, 'regular', text, letters) + 3;

/** Wells whose signs lie in the window. */
export function inWindow(all: readonly SeenWell[], { width, height }: Sight): SeenWell[] {
  return all.filter(({ x, y }) => x > -8 && y > -8 && x < width + 8 && y < height + 8);
}

/** Numbers beside the signs where there is room; the chosen well's before all others. */
export function labelsOf(
  seen: readonly SeenWell[],
  chosen: string | undefined,
  frame: Pick<Sight, 'width' | 'height'>,
): WellLabel[] {
  const first = seen.filter(({ well }) => well.id === chosen);
  const rest = seen.length > most ? [] : seen.filter(({ well }) => well.id !== chosen);
  const all = [...first, ...rest];
  const places = placeLabels(
    all.map(({ x, y, well }) => ({
      x,
      y,
      width: labelWidth(shownWell(well)),
      height: letters + 2,
    })),
    gap,
    frame,
  );
  return all.flatMap(({ well }, at) => {
    const place = places[at];
    return place ? [{ id: well.id, text: shownWell(well), x: place.x, y: place.y + letters }] : [];
  });
}

/** The well nearest to a point, if it is near enough to be meant. */
export function wellAt(seen: readonly SeenWell[], { x, y }: ScreenPoint): MapWell | undefined {
  let best: { readonly far: number; readonly well: MapWell } | undefined;
  for (const one of seen) {
    const far = Math.hypot(one.x - x, one.y - y);
    if (far <= 12 && far < (best?.far ?? Infinity)) best = { far, well: one.well };
  }
  return best?.well;
}
