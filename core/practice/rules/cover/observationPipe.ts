import type { Millimetres } from '../../../base/units.ts';
import type { StringModel } from '../../../model/wellModel.ts';

/** Outside diameter under which a pipe holds no pump, not even a driven point's; common practice. */
const pumpedLeastMm: Millimetres = 40;

/** A pipe for a tape or a gauge only, as in a piezometer: its pack need not settle. */
export function isObservationPipe({ pieces }: StringModel): boolean {
  return pieces.some(
    ({ kind, outsideMm }) => kind === 'screen' && (outsideMm ?? pumpedLeastMm) < pumpedLeastMm,
  );
}
