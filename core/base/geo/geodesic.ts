import type { Metres } from '../units.ts';
import { equatorialRadiusM, flattening, type Position } from './ellipsoid.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const polarRadiusM = equatorialRadiusM * (1 - flattening);

/** Degrees are met to a part in 10¹², a hundredth of a millimetre; few rounds are needed for that. */
const enough = 1e-12;
const mostRounds = 200;

const reducedLatitude = (latitude: number) =>
  Math.atan((1 - flattening) * Math.tan(radians(latitude)));

/** Angles of the geodesic on the auxiliary sphere. */
interface Arc {
  readonly sinSigma: number;
  readonly cosSigma: number;
  readonly sigma: number;
  readonly cosSquaredAlpha: number;
  readonly cos2SigmaMiddle: number;
  readonly sinAlpha: number;
}

function arcOf(u1: number, u2: number, lambda: number): Arc {
  const [sinU1, cosU1, sinU2, cosU2] = [Math.sin(u1), Math.cos(u1), Math.sin(u2), Math.cos(u2)];
  const across = cosU2 * Math.sin(lambda);
  const along = cosU1 * sinU2 - sinU1 * cosU2 * Math.cos(lambda);
  const sinSigma = Math.hypot(across, along);
  const cosSigma = sinU1 * sinU2 + cosU1 * cosU2 * Math.cos(lambda);
  const sinAlpha = sinSigma === 0 ? 0 : (cosU1 * cosU2 * Math.sin(lambda)) / sinSigma;
  const cosSquaredAlpha = 1 - sinAlpha ** 2;
  // Along the equator the middle does not count.
  const cos2SigmaMiddle =
    cosSquaredAlpha < 1e-15 ? 0 : cosSigma - (2 * sinU1 * sinU2) / cosSquaredAlpha;
  const sigma = Math.atan2(sinSigma, cosSigma);
  return { sinSigma, cosSigma, sigma, cosSquaredAlpha, cos2SigmaMiddle, sinAlpha };
}

function nextLambda(arc: Arc, longitude: number): number {
  const { sigma, sinSigma, cosSigma, cosSquaredAlpha, cos2SigmaMiddle: middle, sinAlpha } = arc;
  const c = (flattening / 16) * cosSquaredAlpha * (4 + flattening * (4 - 3 * cosSquaredAlpha));
  const wave = middle + c * cosSigma * (2 * middle ** 2 - 1);
  return longitude + (1 - c) * flattening * sinAlpha * (sigma + c * sinSigma * wave);
}

function lengthOf({ sigma, sinSigma, cosSigma, cosSquaredAlpha, cos2SigmaMiddle }: Arc): Metres {
  const middle = cos2SigmaMiddle;
  const u = (cosSquaredAlpha * (equatorialRadiusM ** 2 - polarRadiusM ** 2)) / polarRadiusM ** 2;
  const a = 1 + (u / 16384) * (4096 + u * (-768 + u * (320 - 175 * u)));
  const b = (u / 1024) * (256 + u * (-128 + u * (74 - 47 * u)));
  const inner =
    cosSigma * (2 * middle ** 2 - 1) -
    (b / 6) * middle * (4 * sinSigma ** 2 - 3) * (4 * middle ** 2 - 3);
  const less = b * sinSigma * (middle + (b / 4) * inner);
  return polarRadiusM * a * (sigma - less);
}

/**
 * Length of the shortest way between two places on WGS 84; undefined of places nearly opposite on
 * the globe, where the series does not settle. Source: Vincenty 1975, Direct and inverse solutions
 * of geodesics on the ellipsoid, Survey Review 23 (176), inverse formula.
 */
export function geodesicM(from: Position, to: Position): Metres | undefined {
  const [u1, u2] = [reducedLatitude(from.latitude), reducedLatitude(to.latitude)];
  const turned = to.longitude - from.longitude;
  const longitude = radians(turned - 360 * Math.round(turned / 360));
  let lambda = longitude;
  for (let round = 0; round < mostRounds; round += 1) {
    const arc = arcOf(u1, u2, lambda);
    const next = nextLambda(arc, longitude);
    if (Math.abs(next - lambda) < enough) return lengthOf(arcOf(u1, u2, next));
    if (Math.abs(next) > Math.PI) return undefined;
    lambda = next;
  }
  return undefined;
}
