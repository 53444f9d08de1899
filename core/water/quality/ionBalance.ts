import type { ParameterId } from '../guidelines/guidelineSet.ts';
import { fromReckoned, fromRecord, reckoned, scaled, sumOf } from '../reckon.ts';
import type { Interval } from '../interval.ts';
import type { Reckoned, ReckonedInput } from '../reckoned.ts';
import type { BalanceState, IonBalance, Reading } from '../results.ts';
import { sources } from '../sources.ts';
import { conversion } from '../units/convert.ts';
import { rangeOf, type FormIn, type SampleReadings } from './ofSample.ts';

const cations = ['calcium', 'magnesium', 'sodium', 'potassium', 'ammonia'];
const anions = [
  'bicarbonate',
  'alkalinity',
  'chloride',
  'sulfate',
  'nitrate',
  'nitrite',
  'fluoride',
];
/** Without these no balance can be drawn; of the two in one row either will do. */
const majors = [
  ['calcium'],
  ['magnesium'],
  ['sodium'],
  ['bicarbonate', 'alkalinity'],
  ['chloride'],
  ['sulfate'],
];
/** Its charge is small beside the others, and it is seldom measured. */
const minors = ['potassium', 'nitrate'];

const goodPercent = 5;
const fairPercent = 10;

interface Charge {
  readonly id: ParameterId;
  readonly meqL: Interval;
  readonly reading: Reading;
}

/** Readings are in mg/l of the usual form of their parameter, as the set tells it. */
function chargeOf(id: ParameterId, reading: Reading, as: string | undefined): Charge | undefined {
  const way = conversion(id, { unit: 'meq/l' }, { unit: 'mg/l', as });
  return way.ok ? { id, meqL: scaled(rangeOf(reading), 1 / way.factor), reading } : undefined;
}

function charges(
  ids: readonly ParameterId[],
  readings: SampleReadings['readings'],
  formIn: FormIn,
): Charge[] {
  return ids.flatMap((id) => {
    const reading = readings.get(id);
    if (!reading || reading.possible.length > 1) return [];
    if (id === 'alkalinity' && readings.has('bicarbonate')) return [];
    return chargeOf(id, reading, formIn(id)) ?? [];
  });
}

function summed(id: 'cationsMeqL' | 'anionsMeqL', all: readonly Charge[]): Reckoned {
  const inputs: ReckonedInput[] = all.map(({ id: symbol, meqL, reading }) =>
    fromRecord(symbol, meqL, 'meq/l', reading.path),
  );
  return reckoned(id, sumOf(all.map(({ meqL }) => meqL)), 'S = Σ cᵢ', inputs, sources.ionBalance);
}

function percent(cation: number, anion: number): number {
  return (100 * (cation - anion)) / (cation + anion);
}

function stateOf({ least, most }: Interval): BalanceState {
  const furthest = Math.max(Math.abs(least), Math.abs(most));
  if (furthest <= goodPercent) return 'good';
  if (furthest <= fairPercent) return 'fair';
  return least > fairPercent || most < -fairPercent ? 'poor' : 'unclear';
}

/**
 * Water has no charge: positive and negative ions balance where all major ones were measured, and
 * measured well. Of the last sample that has the major ions; ions below detection count from
 * nothing to their limit.
 */
export function ionBalance(
  samples: readonly SampleReadings[],
  formIn: FormIn,
): IonBalance | undefined {
  const whole = samples.find(({ readings }) =>
    majors.every((either) => either.some((id) => readings.has(id))),
  );
  if (!whole) return undefined;
  const { sample, readings } = whole;
  const plus = charges(cations, readings, formIn);
  const minus = charges(anions, readings, formIn);
  const [positive, negative] = [summed('cationsMeqL', plus), summed('anionsMeqL', minus)];
  const [cation, anion] = [positive.value, negative.value];
  if (cation.least + anion.most <= 0 || cation.most + anion.least <= 0) return undefined;
  const value = {
    least: percent(cation.least, anion.most),
    most: percent(cation.most, anion.least),
  };
  const used = [...plus, ...minus].map(({ id }) => id);
  return {
    sample,
    cations: positive,
    anions: negative,
    error: reckoned(
      'ionErrorPercent',
      value,
      'e = 100 · (Σ⁺ − Σ⁻) / (Σ⁺ + Σ⁻)',
      [fromReckoned('Σ⁺', positive), fromReckoned('Σ⁻', negative)],
      sources.ionBalance,
    ),
    used,
    lacking: minors.filter((id) => !used.includes(id)),
    state: stateOf(value),
  };
}
