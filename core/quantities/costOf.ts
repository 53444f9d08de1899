import { known } from '../base/known.ts';
import type { Practice, Price } from '../practice/practice.ts';
import {
  quantityKinds,
  type GroupId,
  type Quantities,
  type Quantity,
  type QuantityId,
} from './quantity.ts';

/** What has a price, by the key of the practice’s prices: the quantities that it is paid for. */
export const priced = {
  gravelSack: ['gravelSacks'],
  claySack: ['claySacks'],
  cementSack: ['groutCementSacks', 'concreteCementSacks'],
  mudAdditiveKg: ['mudAdditiveKg'],
  plainM: ['pipeM'],
  screenM: ['pipeM'],
  sumpM: ['pipeM'],
  cap: ['pipeCount'],
  reducer: ['pipeCount'],
  glueKg: ['glueG'],
  centraliser: ['centralisers'],
  sandM3: ['concreteSandLitres'],
  concreteGravelM3: ['concreteGravelLitres'],
  waterM3: ['waterLitres'],
  trip: ['loadTrips', 'waterTrips'],
} as const satisfies Record<string, readonly QuantityId[]>;

export type PriceKey = keyof typeof priced;

/** One line of the costs. */
export interface CostLine {
  readonly key: PriceKey;
  /** What is paid for; where several, their sum. */
  readonly of: readonly Quantity[];
  /** How many of what the price is for. */
  readonly amount: number;
  readonly price: Price;
  readonly cost: number;
}

export interface Costs {
  readonly currency?: string;
  readonly lines: readonly CostLine[];
  /** Sum of the lines; what has no price is not in it. */
  readonly sum: number;
  /** What the well takes and the practice has no price for. */
  readonly unpriced: readonly PriceKey[];
  /** Groups with a price of which something could not be reckoned: the sum lacks it. */
  readonly incomplete: readonly GroupId[];
}

/** Prices are for kilograms and cubic metres of what quantities tell in grams and litres. */
const perPrice: Partial<Record<PriceKey, number>> = {
  glueKg: 1000,
  sandM3: 1000,
  concreteGravelM3: 1000,
  waterM3: 1000,
};

/** Pipes have a key for each kind. */
const kindOf: Partial<Record<PriceKey, string>> = {
  plainM: 'plain',
  screenM: 'screen',
  sumpM: 'sump',
  cap: 'cap',
  reducer: 'reducer',
};

function paidFor(key: PriceKey, quantities: readonly Quantity[]): Quantity[] {
  const ids: readonly QuantityId[] = priced[key];
  const kind = kindOf[key];
  return quantities.filter(
    ({ id, pipe, value }) =>
      ids.includes(id) && value > 0 && (kind === undefined || pipe?.kind === kind),
  );
}

const pricedGroups = new Set<GroupId>(
  Object.values(priced).flatMap((ids) => ids.map((id) => quantityKinds[id].group)),
);

/**
 * What the quantities cost by the prices of the practice; undefined where it has none. A sum is of
 * what could be reckoned and has a price; `unpriced` and `incomplete` tell what it lacks.
 */
export function costOf({ groups }: Quantities, practice: Practice): Costs | undefined {
  const { currency, prices } = practice;
  if (Object.keys(prices).length === 0) return undefined;
  const all = groups.flatMap(({ quantities }) => quantities);
  const taken = (Object.keys(priced) as PriceKey[]).flatMap((key) => {
    const of = paidFor(key, all);
    return of.length === 0 ? [] : [{ key, of }];
  });
  const lines = taken.flatMap(({ key, of }): CostLine[] => {
    const price = prices[key];
    if (!price) return [];
    const amount = of.reduce((sum, { value }) => sum + value, 0) / (perPrice[key] ?? 1);
    return [{ key, of, amount, price, cost: amount * price.each }];
  });
  return {
    ...known({ currency }),
    lines,
    sum: lines.reduce((sum, { cost }) => sum + cost, 0),
    unpriced: taken.flatMap(({ key }) => (prices[key] ? [] : [key])),
    incomplete: groups
      .filter(({ id, missing }) => missing.length > 0 && pricedGroups.has(id))
      .map(({ id }) => id),
  };
}
