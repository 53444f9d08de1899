import type { Metres } from '../../base/units.ts';

/** Metres of water for one of each unit; water of 1000 kg/m³, g 9.80665 m/s². */
export const headUnits = {
  m: 1,
  cm: 0.01,
  mm: 0.001,
  kPa: 0.101972,
  mbar: 0.0101972,
  hPa: 0.0101972,
  bar: 10.1972,
  psi: 0.70307,
} as const;
export type HeadUnit = keyof typeof headUnits;

/** How the values of a sensor in the water become readings of a tape. */
export interface SensorSetting {
  readonly unit: HeadUnit;
  /** One reading of the tape and the sensor's value at the same time. */
  readonly tapeM: Metres;
  readonly valueThen: number;
}

/**
 * Depth of the water below the datum from what a hanging sensor shows: the tape's reading less the
 * head that came on since. The air's pressure drops out as far as it stayed the same.
 */
export function sensorToTape(value: number, { unit, tapeM, valueThen }: SensorSetting): Metres {
  return tapeM - (value - valueThen) * headUnits[unit];
}
