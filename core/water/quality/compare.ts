import type { HeldParameter, HeldValue } from '../guidelines/guidelineSet.ts';
import { valueStates, type Comparison, type Reading, type ValueState } from '../results.ts';
import { conversion } from '../units/convert.ts';

/** Figures are printed rounded: 11.3 mg/l as N is meant to be 50 mg/l as NO3. */
const roundingShare = 0.001;

interface Limit {
  readonly value: number;
  readonly enoughBelow: number;
  readonly slack: number;
}

function compareOne(
  { bound }: HeldValue,
  { value: limit, enoughBelow, slack }: Limit,
  value: number,
  below: boolean,
): ValueState {
  if (bound === 'least') {
    if (below) return value <= limit ? 'below' : 'limitTooHigh';
    return value >= limit - slack ? 'within' : 'below';
  }
  if (below) return value <= enoughBelow + slack ? 'within' : 'limitTooHigh';
  return value <= limit + slack ? 'within' : 'above';
}

function stateOf(held: HeldValue, reading: Reading, parameter: HeldParameter): ValueState {
  if (reading.below && reading.written.value === undefined) return 'limitTooHigh';
  const way = conversion(parameter.id, held, parameter);
  if (!way.ok || reading.possible.length === 0) return 'unitUnknown';
  const value = held.value * way.factor;
  const converted = way.form || reading.conversions.some((code) => code.startsWith('form'));
  const slack = Math.abs(value) * (converted ? roundingShare : Number.EPSILON * 8);
  const limit = { value, enoughBelow: (held.enoughBelow ?? held.value) * way.factor, slack };
  const states = reading.possible.map((one) => compareOne(held, limit, one, reading.below));
  const [first = 'unitUnknown'] = states;
  return states.every((state) => state === first) ? first : 'formUnknown';
}

/** How a reading stands to each value of its parameter; without one, nobody tested. */
export function compare(parameter: HeldParameter, reading: Reading | undefined): Comparison[] {
  return parameter.values.map((value) => ({
    value,
    state: reading ? stateOf(value, reading, parameter) : 'notTested',
  }));
}

/** The state that asks most for something to be done; undefined of none. */
export function worstOf(states: readonly ValueState[]): ValueState | undefined {
  return valueStates.find((state) => states.includes(state));
}

/** Of several readings, the one that stands worst; of equals, the first. */
export function worstReading(
  parameter: HeldParameter,
  readings: readonly Reading[],
): Reading | undefined {
  const rank = (reading: Reading) => {
    const worst = worstOf(compare(parameter, reading).map(({ state }) => state));
    return worst === undefined ? valueStates.length : valueStates.indexOf(worst);
  };
  return readings.reduce<Reading | undefined>(
    (worst, one) => (worst && rank(worst) <= rank(one) ? worst : one),
    undefined,
  );
}
