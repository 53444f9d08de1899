import { assumptions } from '../assumptions.ts';
import {
  exactly,
  fromAssumption,
  fromReckoned,
  reckoned,
  scaled,
  type AssumedFigure,
} from '../reckon.ts';
import type { Interval } from '../interval.ts';
import type { Reckoned, ReckonedInput } from '../reckoned.ts';
import { sources } from '../sources.ts';

/** A dose of chlorine and the product that brings it; where nobody asked, what is assumed. */
export interface Dosing {
  readonly product: 'granules' | 'liquid';
  readonly dose: ReckonedInput;
  readonly strength: ReckonedInput;
}

const litresPerM3 = 1000;
const mgPerG = 1000;

/** A figure that was asked for, else the customary one. */
export function askedOr(
  symbol: string,
  value: number | undefined,
  unit: string,
  assumed: AssumedFigure,
): ReckonedInput {
  return value === undefined
    ? fromAssumption(symbol, assumed)
    : { symbol, value: exactly(value), unit, from: 'asked' };
}

/**
 * Grams of a dry product: m = V · c / s, with V in m³, c in mg/l of available chlorine and s the
 * share of it in the product.
 */
export function productGrams(litres: number, doseMgL: number, strengthPercent: number): number {
  return ((litres / litresPerM3) * doseMgL) / (strengthPercent / 100);
}

/** Millilitres of a liquid of which one per cent is 10 g of chlorine in a litre. */
export function productMillilitres(
  litres: number,
  doseMgL: number,
  strengthPercent: number,
): number {
  const gramsPerLitre = strengthPercent * assumptions.liquidByVolume.value.most;
  return (litres * doseMgL) / gramsPerLitre;
}

/** How much of the product a volume of water takes. */
export function amountOf(water: Reckoned, { product, dose, strength }: Dosing): Reckoned {
  const [litres, mgL, percent] = [water.value.most, dose.value.most, strength.value.most];
  const inputs = [fromReckoned('V', water), dose, strength];
  return product === 'granules'
    ? reckoned(
        'productG',
        exactly(productGrams(litres, mgL, percent)),
        'm = V · c / (10 · s)',
        inputs,
        sources.arithmetic,
      )
    : reckoned(
        'productMl',
        exactly(productMillilitres(litres, mgL, percent)),
        'v = V · c / (k · s)',
        [...inputs, fromAssumption('k', 'liquidByVolume')],
        sources.arithmetic,
      );
}

function spoonsOf(volumeMl: Interval, spoon: 'teaspoon' | 'tablespoon'): Interval {
  return scaled(volumeMl, 1 / assumptions[spoon].value.most);
}

/** Level spoons: of granules between a light and a heavy product, of a liquid by its volume. */
export function spoonsFor(amount: Reckoned): Reckoned[] {
  const dry = amount.id === 'productG';
  const density = assumptions.bulkDensity.value;
  const volumeMl = dry
    ? { least: amount.value.least / density.most, most: amount.value.most / density.least }
    : amount.value;
  const formula = dry ? 'n = m / (ρ · w)' : 'n = v / w';
  return (['teaspoon', 'tablespoon'] as const).map((spoon) =>
    reckoned(
      `${spoon}s`,
      spoonsOf(volumeMl, spoon),
      formula,
      [
        fromReckoned(dry ? 'm' : 'v', amount),
        ...(dry ? [fromAssumption('ρ', 'bulkDensity')] : []),
        fromAssumption('w', spoon),
      ],
      sources.arithmetic,
    ),
  );
}

/** Water to dissolve it in first, so that the stock holds 1 % of available chlorine. */
export function stockFor(water: Reckoned, { dose }: Dosing): Reckoned {
  const chlorineG = (water.value.most * dose.value.most) / mgPerG;
  return reckoned(
    'stockLitres',
    exactly(chlorineG / assumptions.stock.value.most),
    'v = V · c / (1000 · q)',
    [fromReckoned('V', water), dose, fromAssumption('q', 'stock')],
    sources.stock,
  );
}

/** Dry product in a bucket with which the inside of the casing above water is washed. */
export function washFor({ product, strength }: Dosing): Reckoned[] {
  if (product !== 'granules') return [];
  const { wash, washBucket } = assumptions;
  const grams = productGrams(washBucket.value.most, wash.value.most, strength.value.most);
  return [
    reckoned(
      'washProductG',
      exactly(grams),
      'm = B · c / (10 · s)',
      [fromAssumption('B', 'washBucket'), fromAssumption('c', 'wash'), strength],
      sources.washing,
    ),
  ];
}
