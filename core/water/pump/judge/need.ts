import { givenOrAssumed, type PumpBasis } from '../basis.ts';
import { pumpSources } from '../sources.ts';
import type { PumpQuantity } from '../ranking.ts';
import { input, quantity } from './aspect.ts';

/** Water for the users, litres a day; none where nobody said how many they are. */
export function needOf({ users, inputs }: Pick<PumpBasis, 'users' | 'inputs'>) {
  if (!users) return undefined;
  const litres = givenOrAssumed(inputs, 'litresPerPersonDay');
  return quantity(
    'needLitresDay',
    users.value * litres.value,
    'V = N · w',
    [input('N', users, '1'), input('w', litres, 'l/d')],
    pumpSources.geometry,
  );
}

/**
 * From the water while pumping in the dry season up to the outlet, metres; nought where water flows
 * out by itself.
 */
export function liftOf({
  levels: { dryPumpingM },
  inputs,
}: Pick<PumpBasis, 'levels' | 'inputs'>): PumpQuantity | undefined {
  if (dryPumpingM === undefined) return undefined;
  const outlet = givenOrAssumed(inputs, 'outletM');
  return quantity(
    'liftM',
    Math.max(0, dryPumpingM + outlet.value),
    'H = max(0, h + a)',
    [{ symbol: 'h', value: dryPumpingM, unit: 'm', from: 'model' }, input('a', outlet, 'm')],
    pumpSources.geometry,
  );
}
