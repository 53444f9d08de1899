import type { Metres, Millimetres } from '../../base/units.ts';

/** A stretch of screen. */
export interface ScreenFace {
  readonly lengthM: Metres;
  readonly outsideMm: Millimetres;
  /** Slots, per cent of its surface. */
  readonly openPercent: number;
}

const secondsPerHour = 3600;

/** Area of the slots of a stretch of screen, square metres. */
function slotAreaM2({ lengthM, outsideMm, openPercent }: ScreenFace): number {
  return Math.PI * (outsideMm / 1000) * lengthM * (openPercent / 100);
}

/**
 * How fast water goes through the slots, m/s: the rate (m³/h) over their area, of which a share
 * stays open beside the pack. TM 5-813-1, well screens.
 */
export function entranceMs(
  rateM3h: number,
  faces: readonly ScreenFace[],
  openShare: number,
): number {
  const areaM2 = faces.reduce((sum, face) => sum + slotAreaM2(face), 0) * openShare;
  return rateM3h / secondsPerHour / areaM2;
}
