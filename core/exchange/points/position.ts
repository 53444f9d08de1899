import { reason, type Reason } from '../reasons/reason.ts';

/** A position that a file gives, or why it is not taken. */
export type PositionRead =
  | { readonly latitude: number; readonly longitude: number; readonly doubt?: string }
  | { readonly says: Reason };

const isLatitude = (value: number) => Math.abs(value) <= 90;
const isLongitude = (value: number) => Math.abs(value) <= 180;

/**
 * WGS 84 degrees as a file gives them. Zero and zero is what programs write for nothing; a latitude
 * over 90 beside a longitude under it looks as if the two were swapped, but is not set right here.
 */
export function readPosition(latitude: number, longitude: number): PositionRead {
  if (latitude === 0 && longitude === 0) return { says: reason('inTheSea') };
  if (isLatitude(latitude) && isLongitude(longitude)) return { latitude, longitude };
  const swapped = isLatitude(longitude) && isLongitude(latitude);
  return { says: reason(swapped ? 'swapped' : 'notOnEarth', { latitude, longitude }) };
}
