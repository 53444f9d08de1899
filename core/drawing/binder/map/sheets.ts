import type { Box } from '../../items.ts';
import type { BinderKit } from '../binder.ts';
import { mapLabels } from './labels.ts';
import type { PlacedWell } from './placedWell.ts';
import { fitView, largestScale, toPaper, type MapView } from './view.ts';

/** A sheet of the map and the wells that it is made for. */
export interface MapSheet {
  readonly view: MapView;
  readonly wells: readonly PlacedWell[];
}

/** Two halves along the longer side of what the wells take up, north or west first. */
function halves(wells: readonly PlacedWell[], view: MapView) {
  const points = wells.map((well) => ({ well, point: toPaper(view, well.position) }));
  const span = (axis: 0 | 1) => {
    const values = points.map(({ point }) => point[axis]);
    return Math.max(...values) - Math.min(...values);
  };
  const axis = span(1) >= span(0) ? 1 : 0;
  const sorted = points.sort((a, b) => a.point[axis] - b.point[axis]).map(({ well }) => well);
  const middle = Math.ceil(sorted.length / 2);
  return [sorted.slice(0, middle), sorted.slice(middle)] as const;
}

/** Whether a sheet names each of its wells, whatever other wells show on it. */
function namesAll(kit: BinderKit, { view, wells }: MapSheet, all: readonly PlacedWell[]): boolean {
  const own = new Set(wells);
  const others = all.filter((well) => !own.has(well));
  const labels = mapLabels(kit, view, wells, others);
  return labels.every(({ well, at }) => at !== undefined || !own.has(well));
}

/**
 * One sheet where every well has room for its label; else sheets at larger scales of each half. The
 * largest scale ends it: wells that stand on one spot there may lack a label.
 */
export function mapSheets(
  kit: BinderKit,
  wells: readonly PlacedWell[],
  box: Box,
  all: readonly PlacedWell[] = wells,
): MapSheet[] {
  const view = fitView(
    wells.map(({ position }) => position),
    box,
  );
  const sheet = { view, wells };
  if (wells.length < 2 || view.scale <= largestScale || namesAll(kit, sheet, all)) return [sheet];
  return halves(wells, view).flatMap((half) => mapSheets(kit, half, box, all));
}
