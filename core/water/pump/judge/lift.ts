import type { Metres } from '../../../base/units.ts';
import { pumpAssumptions } from '../assumptions.ts';
import { givenOrAssumed, type PumpBasis } from '../basis.ts';
import type { PumpKindData } from '../pumpKind.ts';
import { lacks, says, speaksAgainst, speaksFor, type Aspect } from './aspect.ts';

/** Thin air high above the sea lifts less by suction. */
function mostLiftM({ id }: PumpKindData, mostM: Metres, { elevationM = 0 }: PumpBasis): Metres {
  if (id !== 'suction') return mostM;
  return mostM - Math.max(0, elevationM) * pumpAssumptions.suctionLossPerM.value;
}

/** The lift of the dry season, or the least that it can be. */
function leastLiftM({ lift, levels, inputs }: PumpBasis): Metres | undefined {
  if (lift) return lift.value;
  if (levels.atLeastM === undefined) return undefined;
  return Math.max(0, levels.atLeastM + givenOrAssumed(inputs, 'outletM').value);
}

/**
 * Whether a kind reaches the water. Water that stands too deep already now rules it out, though
 * the dry season's level is not known.
 */
export function judgeLift(kind: PumpKindData, basis: PumpBasis): Aspect {
  const unknown = basis.lift ? [] : basis.missingLevels;
  if (!kind.lift) return lacks(...unknown);
  const { most, well } = kind.lift;
  const mostM = mostLiftM(kind, most.value, basis);
  const liftM = leastLiftM(basis);
  if (liftM !== undefined && liftM > mostM)
    return says(speaksAgainst('liftBeyond', 'rulesOut', { liftM, mostM }, most.source));
  if (!basis.lift || liftM === undefined) return lacks(...unknown);
  if (well && liftM > well.value) {
    const values = { liftM, wellM: well.value, mostM };
    return says(speaksAgainst('liftNearMost', 'doubts', values, well.source, most.source));
  }
  return says(speaksFor('liftWithin', { liftM, mostM }, most.source));
}
