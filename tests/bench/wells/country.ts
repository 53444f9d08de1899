import { seededRandom } from '../../../core/base/random.ts';
import { personName, placeName, placeNames } from './names.ts';

/** A district of the invented country, about 30 km across. */
export interface District {
  readonly region: string;
  readonly name: string;
  readonly villages: readonly string[];
  /** Middle, degrees. */
  readonly latitude: number;
  readonly longitude: number;
}

const regions = 12;
const districtsEach = 10;
const villagesEach = 60;

const random = seededRandom(4711);
const regionNames = placeNames(regions, random);
const districtNames = placeNames(regions * districtsEach, random);

/** 12 regions of 10 districts of 60 villages, on a grid near the equator. */
export const districts: readonly District[] = districtNames.map((name, at) => ({
  region: regionNames[Math.floor(at / districtsEach)]!,
  name,
  villages: placeNames(villagesEach, random),
  latitude: 1 + 0.3 * Math.floor(at / districtsEach),
  longitude: -8 + 0.3 * (at % districtsEach),
}));

const named = (count: number, name: () => string) => Array.from({ length: count }, name);

export const clients = named(20, () => `Eau rurale de ${placeName(random)}`);
export const contractors = named(60, () => `Forages ${placeName(random)}`);
export const people = named(300, () => personName(random));
