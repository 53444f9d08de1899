import type { LogInterval } from '../../record/log.ts';
import type { Material } from '../../record/materials.ts';
import type { GroundClass } from './groundClasses.ts';

/** Water runs in channels there, at any speed: no estimate holds. */
const channelled: readonly Material[] = [
  'cavity',
  'limestone',
  'dolomite',
  'chalk',
  'marble',
  'gypsum',
  'salt',
];

const untold: readonly Material[] = ['noSample', 'other', 'topsoil', 'soil', 'madeGround'];

const classes: Partial<Record<Material, GroundClass>> = {
  clay: 'clay',
  mud: 'clay',
  silt: 'silt',
  loess: 'silt',
  peat: 'silt',
  diamicton: 'silt',
  sand: 'anySand',
  gravel: 'gravel',
  cobbles: 'gravel',
  boulders: 'gravel',
  laterite: 'weatheredRock',
  calcrete: 'weatheredRock',
  saprolite: 'weatheredRock',
};

/** Soft rocks that hold water back where they are whole, and sandstone that lets it through. */
const softRocks: Partial<Record<Material, GroundClass>> = {
  claystone: 'clay',
  mudstone: 'clay',
  siltstone: 'clay',
  shale: 'clay',
  marl: 'clay',
  coal: 'clay',
  sandstone: 'sandstone',
  conglomerate: 'sandstone',
  breccia: 'sandstone',
};

const sands: Partial<Record<NonNullable<LogInterval['grain']>, GroundClass>> = {
  fine: 'fineSand',
  fineToMedium: 'fineToMediumSand',
  medium: 'mediumSand',
  mediumToCoarse: 'mediumToCoarseSand',
  coarse: 'coarseSand',
};

function holds({ qualifiers = [] }: LogInterval, material: Material): boolean {
  return qualifiers.some((one) => one.material === material && one.degree !== 'slightly');
}

function looseClass(interval: LogInterval, plain: GroundClass): GroundClass {
  if (plain === 'anySand') {
    if (holds(interval, 'gravel')) return 'sandAndGravel';
    return (interval.grain && sands[interval.grain]) ?? 'anySand';
  }
  return plain === 'gravel' && holds(interval, 'sand') ? 'sandAndGravel' : plain;
}

/**
 * How fast water may move in ground, as far as its description tells; undefined where it does not.
 * Hard rock counts as cracked, since nobody sees all of it (common practice).
 */
export function groundOf(interval: LogInterval): GroundClass | 'channels' | undefined {
  const { material, fractured, moisture, weathering } = interval;
  if (material === undefined || untold.includes(material)) return undefined;
  if (channelled.includes(material)) return 'channels';
  const loose = classes[material];
  if (loose) return looseClass(interval, loose);
  const soft = softRocks[material];
  if (soft && !fractured && moisture !== 'waterBearing') return soft;
  const rotten = ['moderately', 'highly', 'completely'].includes(weathering ?? '');
  return rotten ? 'weatheredRock' : 'fracturedRock';
}
