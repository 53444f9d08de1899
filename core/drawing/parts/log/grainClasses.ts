import type { GrainClass, LogInterval } from '../../../record/log.ts';
import type { Material } from '../../../record/materials.ts';

/**
 * Classes of grain by the letters of ISO 14688-1 (from memory), finest first: clay to 0.002 mm,
 * silt to 0.063, sand to 2, gravel to 63, cobbles to 200, boulders above.
 */
export const grainLetters = ['Cl', 'Si', 'Sa', 'Gr', 'Co', 'Bo'] as const;

export type GrainLetters = (typeof grainLetters)[number];

/** Materials whose name says their grain; rock is named so for the grain that it is made of. */
const classOf: Readonly<Partial<Record<Material, GrainLetters>>> = {
  clay: 'Cl',
  claystone: 'Cl',
  silt: 'Si',
  siltstone: 'Si',
  loess: 'Si',
  sand: 'Sa',
  sandstone: 'Sa',
  gravel: 'Gr',
  conglomerate: 'Gr',
  breccia: 'Gr',
  cobbles: 'Co',
  boulders: 'Bo',
};

/** Where fine, medium and coarse lie within silt, sand and gravel, each a third of its class. */
const within: Readonly<Record<GrainClass, number>> = {
  fine: 1 / 6,
  fineToMedium: 1 / 3,
  medium: 1 / 2,
  mediumToCoarse: 2 / 3,
  coarse: 5 / 6,
  fineToCoarse: 1 / 2,
};

const parted: readonly GrainLetters[] = ['Si', 'Sa', 'Gr'];

/**
 * How coarse an interval is, in classes: 0.5 is the middle of clay, 2.5 that of sand. Undefined for
 * ground whose name does not say its grain.
 */
export function coarseness({ material, grain }: LogInterval): number | undefined {
  const letters = material && classOf[material];
  if (letters === undefined) return undefined;
  const part = grain !== undefined && parted.includes(letters) ? within[grain] : 0.5;
  return grainLetters.indexOf(letters) + part;
}
