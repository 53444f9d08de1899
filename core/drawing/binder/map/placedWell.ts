import type { LonLat } from '../../../base/geo/shapes.ts';
import type { BinderWell } from '../binderWell.ts';

export interface PlacedWell extends BinderWell {
  readonly position: LonLat;
}

export function isPlaced(well: BinderWell): well is PlacedWell {
  return well.position !== undefined;
}
