import type { Metres } from '../units.ts';
import { degreeOfLatitudeM, degreeOfLongitudeM, type Position } from './ellipsoid.ts';
import { turned } from './extent.ts';

/** A place on a local map, metres from its centre. */
export interface PlanePoint {
  readonly eastM: Metres;
  readonly northM: Metres;
}

/** A map of one part of the globe whose scale is right at its centre. */
export interface LocalPlane {
  readonly centre: Position;
  toPlane(position: Position): PlanePoint;
  toPosition(point: PlanePoint): Position;
}

/**
 * Equirectangular projection about a centre, with the degrees' lengths on WGS 84 at its latitude.
 * Meridians and parallels are straight and north is up everywhere. Away from the centre's parallel
 * east–west lengths go wrong by the ratio of the parallels' lengths: at 10° by 0.3 % a degree.
 */
export function planeAt(centre: Position): LocalPlane {
  const { latitude, longitude } = centre;
  const eastM = degreeOfLongitudeM(latitude);
  const northM = degreeOfLatitudeM(latitude);
  return {
    centre,
    toPlane: (position) => ({
      eastM: (turned(position.longitude, longitude - 180) - longitude) * eastM,
      northM: (position.latitude - latitude) * northM,
    }),
    toPosition: (point) => ({
      latitude: latitude + point.northM / northM,
      longitude: turned(longitude + point.eastM / eastM, -180),
    }),
  };
}

/**
 * How many times too long an east–west line is drawn at a latitude, against the plane's own
 * scale; 1 at the centre.
 */
export function stretchAt({ centre }: LocalPlane, latitude: number): number {
  return degreeOfLongitudeM(centre.latitude) / degreeOfLongitudeM(latitude);
}
