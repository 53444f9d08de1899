import type { Millimetres } from '../../base/units.ts';
import type { GrainClass, LogInterval } from '../../record/log.ts';
import type { Material } from '../../record/materials.ts';
import { sizeFiner, uniformity } from './sieve.ts';

/** Between what sizes something lies that is not known exactly; both alike where it is. */
export interface SizeBounds {
  readonly leastMm: Millimetres;
  readonly mostMm: Millimetres;
}

type Grained = 'silt' | 'sand' | 'gravel';
type Band = 'fine' | 'medium' | 'coarse';

/**
 * Size limits of grain words, mm. ISO 14688-1 (from memory); the bounds of silt and gravel in the
 * Udden-Wentworth scale, which parts them otherwise, are those of the whole.
 */
const iso14688: Readonly<Record<Grained, readonly [number, number, number, number]>> = {
  silt: [0.002, 0.0063, 0.02, 0.063],
  sand: [0.063, 0.2, 0.63, 2],
  gravel: [2, 6.3, 20, 63],
};

/** Wentworth 1922 (from memory); fine takes in very fine, coarse very coarse. */
const wentworthSand = [0.0625, 0.25, 0.5, 2] as const;
const wentworthWhole = { silt: [0.0039, 0.0625], gravel: [2, 64] } as const;

const bandsOf: Readonly<Record<GrainClass, readonly [Band, Band]>> = {
  fine: ['fine', 'fine'],
  fineToMedium: ['fine', 'medium'],
  medium: ['medium', 'medium'],
  mediumToCoarse: ['medium', 'coarse'],
  coarse: ['coarse', 'coarse'],
  fineToCoarse: ['fine', 'coarse'],
};

const bandOrder: readonly Band[] = ['fine', 'medium', 'coarse'];

function withinCuts(cuts: readonly number[], grain: GrainClass): SizeBounds {
  const [from, to] = bandsOf[grain];
  const [leastMm = 0, mostMm = Infinity] = [
    cuts[bandOrder.indexOf(from)],
    cuts[bandOrder.indexOf(to) + 1],
  ];
  return { leastMm, mostMm };
}

function isoBounds(material: Grained, grain: GrainClass): SizeBounds {
  return withinCuts(iso14688[material], grain);
}

function wentworthBounds(material: Grained, grain: GrainClass): SizeBounds {
  if (material === 'sand') return withinCuts(wentworthSand, grain);
  const [leastMm, mostMm] = wentworthWhole[material];
  return { leastMm, mostMm };
}

function isGrained(material: Material | undefined): material is Grained {
  return material === 'silt' || material === 'sand' || material === 'gravel';
}

const finerThan: Readonly<Record<Grained, readonly Material[]>> = {
  silt: ['clay', 'mud', 'peat'],
  sand: ['silt', 'clay', 'mud', 'peat'],
  gravel: ['sand', 'silt', 'clay', 'mud', 'peat'],
};

/** The size of its principal grain by its words; both scales' where the log does not say which. */
function byWords({ material, grain, grainScheme }: LogInterval): SizeBounds | undefined {
  if (!isGrained(material) || grain === undefined) return undefined;
  const [iso, wentworth] = [isoBounds(material, grain), wentworthBounds(material, grain)];
  if (grainScheme !== undefined) return grainScheme === 'iso14688' ? iso : wentworth;
  return {
    leastMm: Math.min(iso.leastMm, wentworth.leastMm),
    mostMm: Math.max(iso.mostMm, wentworth.mostMm),
  };
}

/** Whether more than a little finer material is mixed in, so that the finest share is finer. */
function hasFiner({ material, qualifiers }: LogInterval): boolean {
  if (!isGrained(material)) return false;
  return (qualifiers ?? []).some(
    (one) => one.degree !== 'slightly' && finerThan[material].includes(one.material),
  );
}

/**
 * Whether a layer is no finer than another by the words of the log: its grain word means no finer
 * sizes, and nothing finer than the other's principal grain is mixed in by more than a little.
 */
export function isNoFiner(layer: LogInterval, than: LogInterval): boolean {
  const [own, other] = [byWords(layer), byWords(than)];
  if (!own || !other || !isGrained(than.material)) return false;
  const finer = finerThan[than.material];
  const isMixed = (layer.qualifiers ?? []).some(
    ({ material, degree }) => degree !== 'slightly' && finer.includes(material),
  );
  return !isMixed && own.leastMm >= other.leastMm && own.mostMm >= other.mostMm;
}

/** Grain of a layer, as far as a sieve curve or its words tell. */
export interface LayerGrain extends SizeBounds {
  /** d60 / d10, where a sieve tells. */
  readonly uniformity?: number;
  readonly bySieve: boolean;
}

/**
 * The size than which a share of a layer is finer (d30 for 30). A sieve curve tells it; else it
 * lies within what the grain words mean, if that share is not in what is mixed in. Nothing for
 * rock, clay and for grain that nobody described.
 */
export function grainOf(interval: LogInterval, percentFiner: number): LayerGrain | undefined {
  const curve = interval.sieve ?? [];
  const size = sizeFiner(curve, percentFiner);
  if (size !== undefined) {
    const uneven = uniformity(curve);
    return {
      leastMm: size,
      mostMm: size,
      bySieve: true,
      ...(uneven === undefined ? {} : { uniformity: uneven }),
    };
  }
  const bounds = byWords(interval);
  if (!bounds) return undefined;
  return { ...bounds, leastMm: hasFiner(interval) ? 0 : bounds.leastMm, bySieve: false };
}
