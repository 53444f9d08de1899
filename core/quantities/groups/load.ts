import { counted, fromAssumption, fromFigure, fromQuantity } from '../inputs.ts';
import type { Quantity, QuantityId, QuantityInput } from '../quantity.ts';
import { eachOnce, reckon, told, wholeOf, wholes, type Reckoned } from '../reckon.ts';
import type { ReckonedWell } from '../reckonedWell.ts';
import { sources } from '../sources.ts';
import { sackIn } from './sacksInAll.ts';

/** A term of the sum: one mass, or an amount times what one of it weighs. */
interface Term {
  readonly amount: Quantity;
  readonly each?: QuantityInput;
}

/** Whole sacks weigh what is on the lorry; where sacks differ, zone by zone. */
function sacks(group: Reckoned, all: QuantityId, byZone?: QuantityId): Term[] {
  const whole = wholeOf(group, all);
  if (!whole) return [];
  const each = sackIn(whole);
  if (each) return [{ amount: whole, each }];
  return group.quantities
    .filter(({ id }) => id === byZone)
    .map((amount) => ({ amount, each: sackIn(amount)! }));
}

function amountOf(group: Reckoned, id: QuantityId, each?: QuantityInput): Term[] {
  const amount = wholeOf(group, id);
  return amount ? [{ amount, ...(each && { each }) }] : [];
}

/** The groups that a load is of. */
export interface Loaded {
  readonly gravel: Reckoned;
  readonly clay: Reckoned;
  readonly grout: Reckoned;
  readonly mud: Reckoned;
  readonly pipes: Reckoned;
  readonly concrete: Reckoned;
}

function termsOf(
  { gravel, clay, grout, mud, pipes, concrete }: Loaded,
  well: ReckonedWell,
): Term[] {
  return [
    ...sacks(gravel, 'gravelSacks', 'gravelZoneSacks'),
    ...sacks(clay, 'claySacks', 'clayZoneSacks'),
    ...sacks(grout, 'groutCementSacks', 'groutZoneCementSacks'),
    ...amountOf(mud, 'mudAdditiveKg'),
    ...amountOf(pipes, 'pipesKg'),
    ...sacks(concrete, 'concreteCementSacks'),
    ...amountOf(concrete, 'concreteSandLitres', fromAssumption('ρ', 'looseSandKgL')),
    ...amountOf(concrete, 'concreteGravelLitres', fromFigure('ρ', 'gravelKgL', well.practice)),
  ];
}

/** Missing is what keeps a mass from being known; centralisers, joints and a drain weigh little. */
function lackingOf(groups: Loaded) {
  const { pipes, ...others } = groups;
  const small = ['centralisers', 'joint', 'drain'];
  return eachOnce(
    [...Object.values(others), pipes]
      .flatMap((group: Reckoned) => group.missing)
      .filter(({ what }) => !small.includes(what)),
  );
}

/** What is to be carried to the site beside water, and in how many trips. */
export function reckonLoad(well: ReckonedWell, groups: Loaded): Reckoned {
  const missing = lackingOf(groups);
  const terms = termsOf(groups, well);
  if (missing.length > 0 || terms.length === 0) return { quantities: [], missing };
  const payload = fromFigure('P', 'payloadKg', well.practice);
  const load = reckon(
    'loadKg',
    terms.reduce((sum, { amount, each }) => sum + amount.value * (each?.value ?? 1), 0),
    {
      formula: `m = ${terms.map(({ each }, at) => counted('q', at + 1) + (each ? ` · ${counted('s', at + 1)}` : '')).join(' + ')}`,
      inputs: terms.flatMap(({ amount, each }, at) => [
        fromQuantity(counted('q', at + 1), amount),
        ...(each ? [{ ...each, symbol: counted('s', at + 1) }] : []),
      ]),
      source: sources.common,
    },
  );
  const trips =
    load &&
    reckon('loadTrips', wholes(load.value, payload.value), {
      formula: 'n ≥ m / P',
      inputs: [fromQuantity('m', load), payload],
      source: sources.common,
    });
  return { quantities: told([load, trips]), missing };
}
