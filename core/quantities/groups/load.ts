import { counted, fromFigure, fromQuantity } from '../inputs.ts';
import type { Missing, Quantity, QuantityId, QuantityInput } from '../quantity.ts';
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
    ...amountOf(concrete, 'concreteSandLitres', fromFigure('ρ', 'looseSandKgL', well.practice)),
    ...amountOf(concrete, 'concreteGravelLitres', fromFigure('ρ', 'gravelKgL', well.practice)),
  ];
}

/** What the masses lack; centralisers and glue are not among them. */
function lackingOf(groups: Loaded): Missing[] {
  return eachOnce(
    Object.values(groups)
      .flatMap(({ missing }: Reckoned) => missing)
      .filter(({ what }) => what !== 'centralisers' && what !== 'joint'),
  );
}

/**
 * What is to be carried to the site beside water, and in how many trips. Concrete goes without a
 * drain that nobody measured; what else is missing leaves no whole.
 */
export function reckonLoad(well: ReckonedWell, groups: Loaded): Reckoned {
  const missing = lackingOf(groups);
  const terms = termsOf(groups, well);
  if (missing.some(({ what }) => what !== 'drain') || terms.length === 0)
    return { quantities: [], missing };
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
