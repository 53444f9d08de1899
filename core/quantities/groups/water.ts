import { fromFigure, fromQuantity } from '../inputs.ts';
import type { Missing, Quantity, QuantityId } from '../quantity.ts';
import {
  eachOnce,
  nothing,
  reckon,
  sumOf,
  told,
  wholeOf,
  wholes,
  type Reckoned,
} from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { sources } from '../sources.ts';
import { isForUse } from '../stillPlan.ts';
import { isDrilledWet, methodMissing } from './mud.ts';
import { holeVolume } from './volumes.ts';

/** Clean water that takes the mud out of the hole, as many times as the hole holds. */
function reckonFlush(well: ReckonedWell): Reckoned {
  if (!isForUse(well.record)) return nothing;
  const isWet = isDrilledWet(well);
  if (isWet === undefined) return { quantities: [], missing: [methodMissing] };
  if (!isWet) return nothing;
  const { volume, missing } = holeVolume(well);
  if (!volume) return { quantities: [], missing };
  const times = fromFigure('n', 'flushVolumes', well.practice);
  const flush = reckon('flushLitres', volume.value * times.value, {
    formula: 'V = Vh · n',
    inputs: [fromQuantity('Vh', volume), times],
    source: sources.common,
  });
  return { quantities: told([flush]), missing: [] };
}

/** What a use takes in all; unknown where something of it is missing that leaves no whole. */
interface Use {
  readonly part: Quantity | undefined;
  readonly missing: readonly Missing[];
}

function useOf(group: Reckoned, id: QuantityId): Use {
  return { part: wholeOf(group, id), missing: group.missing };
}

function isUnknown({ part, missing }: Use): boolean {
  return part === undefined && missing.length > 0;
}

/** Litres as kilograms: what a trip carries of water. */
function tripsFor(litres: Quantity | undefined, { practice }: ReckonedWell) {
  if (!litres) return undefined;
  const payload = fromFigure('P', 'payloadKg', practice);
  return reckon('waterTrips', wholes(litres.value, payload.value), {
    formula: 'n ≥ V / P',
    inputs: [fromQuantity('V', litres), payload],
    source: sources.common,
  });
}

/**
 * Water to fetch: for mud, flushing, grout and concrete; the whole where each part is known. That
 * concrete goes without a drain that nobody measured is told here too.
 */
export function reckonWater(
  well: ReckonedWell,
  groups: { readonly mud: Reckoned; readonly grout: Reckoned; readonly concrete: Reckoned },
): Reckoned {
  const flush = reckonFlush(well);
  const uses = [
    useOf(groups.mud, 'mudLitres'),
    useOf(flush, 'flushLitres'),
    useOf(groups.grout, 'groutWaterLitres'),
    useOf(groups.concrete, 'concreteWaterLitres'),
  ];
  const parts = told(uses.map(({ part }) => part));
  const whole = uses.some(isUnknown) ? undefined : sumOf('waterLitres', parts);
  return {
    quantities: told([...flush.quantities, whole, tripsFor(whole, well)]),
    missing: eachOnce(uses.flatMap(({ missing }) => missing)),
  };
}
