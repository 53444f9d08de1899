import type { Source } from '../../../practice/practice.ts';
import { pumpAssumptions } from '../assumptions.ts';
import { givenOrAssumed, type Known, type PumpBasis } from '../basis.ts';
import type { PumpKindData } from '../pumpKind.ts';
import type { PumpMissing, PumpQuantity, PumpQuantityInput, Reason } from '../ranking.ts';
import { pumpSources } from '../sources.ts';
import { assumed, fromQuantity, input, quantity, speaksAgainst, speaksFor } from './aspect.ts';

const hoursADay = 24;
const minutesAnHour = 60;

/** What a kind gives its users: no more than it lifts, and no more than the well was tested for. */
export interface Supply {
  readonly flow: PumpQuantity;
  readonly safeRate: Known;
  readonly need: PumpQuantity;
}

/** What keeps its service from being reckoned. */
export function missingOfService({ safeRate, users }: PumpBasis): PumpMissing[] {
  return [
    ...(safeRate ? [] : [{ what: 'safeRate', path: 'tests', given: 'safeRateM3h' } as const]),
    ...(users ? [] : [{ what: 'users', path: 'site.users', given: 'users' } as const]),
  ];
}

function rateM3h({ flow, safeRate }: Supply): number {
  return Math.min(flow.value, safeRate.value);
}

function rates({ flow, safeRate }: Supply): PumpQuantityInput[] {
  return [fromQuantity('Q', flow), input('Qs', safeRate, 'm³/h')];
}

/** Hours of pumping a day for what the users need. */
export function hoursOf(supply: Supply): PumpQuantity {
  return quantity(
    'hoursDay',
    supply.need.value / 1000 / rateM3h(supply),
    't = V / (1000 · min(Q, Qs))',
    [fromQuantity('V', supply.need), ...rates(supply)],
    pumpSources.geometry,
  );
}

/** How long a container under the spout takes to fill. */
export function fillTimeOf(supply: Supply): PumpQuantity {
  const litres = pumpAssumptions.containerLitres.value;
  return quantity(
    'fillMinutes',
    (litres / 1000 / rateM3h(supply)) * minutesAnHour,
    't = 60 · v / (1000 · min(Q, Qs))',
    [assumed('v', 'containerLitres'), ...rates(supply)],
    pumpSources.geometry,
  );
}

/**
 * The longest wait: people come evenly over the busiest hours, the pump never stops, and the last
 * who came wait until what they came for is pumped.
 */
export function queueOf(supply: Supply): PumpQuantity {
  const [share, hours] = [pumpAssumptions.peakShare.value, pumpAssumptions.peakHours.value];
  const pumpedH = (share * supply.need.value) / 1000 / rateM3h(supply);
  return quantity(
    'queueMinutes',
    Math.max(0, pumpedH - hours) * minutesAnHour,
    'w = max(0, 60 · (s · V / (1000 · min(Q, Qs)) − P))',
    [
      assumed('s', 'peakShare'),
      fromQuantity('V', supply.need),
      ...rates(supply),
      assumed('P', 'peakHours'),
    ],
    pumpSources.common,
  );
}

/** How many it can serve in the hours that people pump, and by its own limit. */
export function servedOf(supply: Supply, kind: PumpKindData, { inputs }: PumpBasis): PumpQuantity {
  const hours = givenOrAssumed(inputs, 'hoursMost');
  const litres = givenOrAssumed(inputs, 'litresPerPersonDay');
  const byFlow = Math.floor((rateM3h(supply) * 1000 * hours.value) / litres.value + 1e-9);
  const most = kind.users?.most;
  return quantity(
    'peopleServed',
    Math.min(byFlow, most?.value ?? Infinity),
    most ? 'n ≤ min(1000 · min(Q, Qs) · t / w, N)' : 'n ≤ 1000 · min(Q, Qs) · t / w',
    [
      ...rates(supply),
      input('t', hours, 'h/d'),
      input('w', litres, 'l/d'),
      ...(most ? [{ symbol: 'N', value: most.value, unit: '1', from: 'kind' } as const] : []),
    ],
    pumpSources.geometry,
  );
}

/** Hours that a pump of the kind runs in a day, and those of any pump. */
export interface HoursLimit {
  readonly most: number;
  readonly ofAnyPump: number;
  readonly source: Source;
}

/** Whether hours of pumping are within a day’s; where not, whether the well or the pump is short. */
export function judgeHours(
  hours: PumpQuantity,
  supply: Supply,
  { most, ofAnyPump, source }: HoursLimit,
): Reason[] {
  const wellHours = supply.need.value / 1000 / supply.safeRate.value;
  const values = { hours: hours.value, most };
  if (wellHours > Math.max(most, ofAnyPump)) {
    const short = { rate: supply.safeRate.value, hours: wellHours, most: ofAnyPump };
    return [speaksAgainst('wellShort', 'doubts', short, source)];
  }
  if (hours.value > hoursADay)
    return [speaksAgainst('flowTooLow', 'rulesOut', values, supply.flow.source)];
  if (hours.value > most) return [speaksAgainst('longHours', 'doubts', values, source)];
  return [speaksFor('needMet', values, source)];
}

/** Whether people wait longer than they should. */
export function judgeQueue(queue: PumpQuantity): Reason[] {
  const most = pumpAssumptions.queueMost;
  if (queue.value <= most.value) return [];
  const values = { minutes: queue.value, most: most.value };
  return [speaksAgainst('longQueue', 'doubts', values, most.source)];
}

/** Users against what a pump of the kind is made for. */
export function judgeUsers({ users: limit }: PumpKindData, users: Known): Reason[] {
  if (!limit) return [];
  const { most, advised, lightType } = limit;
  const values = { users: users.value, most: most.value };
  if (users.value > most.value) {
    const pumps = Math.ceil(users.value / most.value);
    return [speaksAgainst('usersAboveMost', 'doubts', { ...values, pumps }, most.source)];
  }
  if (advised && users.value > advised.value) {
    const above = { ...values, advised: advised.value };
    return [speaksAgainst('usersAboveAdvised', 'doubts', above, advised.source, most.source)];
  }
  const light =
    lightType && users.value > lightType.value
      ? [speaksAgainst('lightType', 'notes', { light: lightType.value }, lightType.source)]
      : [];
  return [speaksFor('usersWithin', values, most.source), ...light];
}
