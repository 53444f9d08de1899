/** A position that a file gives, or why it is not taken. */
export type PositionRead =
  | { readonly latitude: number; readonly longitude: number; readonly doubt?: string }
  | { readonly sentence: string };

const isLatitude = (value: number) => Math.abs(value) <= 90;
const isLongitude = (value: number) => Math.abs(value) <= 180;

/**
 * WGS 84 degrees as a file gives them. Zero and zero is what programs write for nothing; a latitude
 * over 90 beside a longitude under it looks as if the two were swapped, but is not set right here.
 */
export function readPosition(latitude: number, longitude: number): PositionRead {
  if (latitude === 0 && longitude === 0)
    return { sentence: 'The position 0, 0 is in the sea off Africa; it was left out.' };
  if (isLatitude(latitude) && isLongitude(longitude)) return { latitude, longitude };
  const swapped = isLatitude(longitude) && isLongitude(latitude);
  const hint = swapped ? ' Latitude and longitude look swapped.' : '';
  return {
    sentence: `${latitude}, ${longitude} is no latitude and longitude; it was left out.${hint}`,
  };
}
