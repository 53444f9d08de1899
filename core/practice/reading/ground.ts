import type { LogInterval } from '../../record/log.ts';
import type { Material } from '../../record/materials.ts';

/** How readily ground lets water through, as far as its description tells. */
export type Conductance = 'good' | 'poor' | 'unknown';

const open: readonly Material[] = ['sand', 'gravel', 'cobbles', 'boulders', 'cavity'];
const tight: readonly Material[] = [
  'clay',
  'silt',
  'mud',
  'peat',
  'loess',
  'claystone',
  'mudstone',
  'siltstone',
  'shale',
  'marl',
  'coal',
  'topsoil',
];

const fines: readonly Material[] = ['clay', 'silt', 'mud', 'peat'];

/**
 * Sands and gravels conduct, clays and silts do not; sand that is very clayey tells nothing, nor
 * does rock unless it is said to be fractured or to bear water. Mudstones and shales hold water back
 * where they are whole. Common practice.
 */
export function conductanceOf({
  material,
  qualifiers,
  moisture,
  fractured,
}: LogInterval): Conductance {
  if (moisture === 'waterBearing') return 'good';
  if (material === undefined) return 'unknown';
  if (tight.includes(material)) return fractured ? 'good' : 'poor';
  if (open.includes(material)) {
    const choked = qualifiers?.some((one) => one.degree === 'very' && fines.includes(one.material));
    return choked ? 'unknown' : 'good';
  }
  return fractured ? 'good' : 'unknown';
}

/** Whether ground holds water back between two aquifers. */
export function holdsBack(interval: LogInterval): boolean {
  return conductanceOf(interval) === 'poor';
}
