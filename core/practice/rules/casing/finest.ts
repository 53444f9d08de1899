import { cut, type Range } from '../../../model/range.ts';
import { intervalsOf } from '../../../model/strata.ts';
import type { Stratum, WellModel } from '../../../model/wellModel.ts';
import { grainOf, isNoFiner, type LayerGrain, type SizeBounds } from '../../reading/grain.ts';
import { conductanceOf } from '../../reading/ground.ts';
import type { LogInterval } from '../../../record/log.ts';
import type { Missing } from '../rule.ts';

/** A layer that a screen draws from, with its grain where that is told. */
interface Layer {
  readonly stratum: Stratum;
  readonly interval: LogInterval;
  readonly grain: LayerGrain | undefined;
}

/** The finest ground that a screen draws from. */
export interface FinestGround extends SizeBounds {
  /** The layer that is certainly as fine as that. */
  readonly layer: LayerGrain;
  /** What would tell it better. */
  readonly untold: readonly Missing[];
}

const loose: readonly LogInterval['material'][] = ['silt', 'sand', 'gravel'];

/** Loose ground that gives water; clay beside a screen is another rule's. */
function isDrawnFrom(interval: LogInterval): boolean {
  return loose.includes(interval.material) && conductanceOf(interval) === 'good';
}

function layersBeside(model: WellModel, { fromM, toM }: Range, percentFiner: number): Layer[] {
  return model.strata
    .filter((stratum) => cut(stratum, fromM, toM) !== undefined)
    .flatMap((stratum) =>
      intervalsOf(stratum)
        .filter(isDrawnFrom)
        .map((interval) => ({ stratum, interval, grain: grainOf(interval, percentFiner) })),
    );
}

/** Leaves out layers without a sieve that are by their words no finer than one with a sieve. */
function finestOf(layers: readonly Layer[]): Layer[] {
  const sieved = layers.filter(({ grain }) => grain?.bySieve);
  return layers.filter(
    (layer) =>
      layer.grain?.bySieve || !sieved.some((one) => isNoFiner(layer.interval, one.interval)),
  );
}

function untoldOf({ stratum }: Layer): Missing {
  const { fromM, toM, path } = stratum;
  return { what: 'grainOrSieve', path: `${path}.sieve`, fromM, toM };
}

/** How fine the finest layer is at some share: no coarser than any one that is known. */
function boundsOf(grains: readonly LayerGrain[], allTold: boolean): SizeBounds {
  return {
    leastMm: allTold ? Math.min(...grains.map(({ leastMm }) => leastMm)) : 0,
    mostMm: Math.min(...grains.map(({ mostMm }) => mostMm)),
  };
}

/**
 * The finest loose ground beside a stretch, by the size than which a share of it is finer. Only
 * what is missing where no layer has a grain; `none` where there is no loose ground, as in rock.
 */
export function finestGround(
  model: WellModel,
  stretch: Range,
  percentFiner: number,
): FinestGround | { readonly untold: readonly Missing[] } | 'none' {
  const layers = finestOf(layersBeside(model, stretch, percentFiner));
  if (layers.length === 0) return 'none';
  const grains = layers.flatMap(({ grain }) => grain ?? []);
  const bounds = boundsOf(grains, grains.length === layers.length);
  const layer = grains.find(({ mostMm }) => mostMm === bounds.mostMm);
  if (!layer) return { untold: layers.map(untoldOf) };
  const open = layers.filter(
    ({ grain }) => grain === undefined || (!grain.bySieve && grain.leastMm < bounds.mostMm),
  );
  return { ...bounds, layer, untold: open.map(untoldOf) };
}
