import { pumpAssumptions } from '../assumptions.ts';
import { givenOrAssumed, type PumpBasis } from '../basis.ts';
import { flowAt } from '../flowAt.ts';
import type { PumpKindData } from '../pumpKind.ts';
import type { PumpQuantity, PumpQuantityInput } from '../ranking.ts';
import { pumpSources } from '../sources.ts';
import { fromQuantity, lacks, nothing, quantity, speaksAgainst, type Aspect } from './aspect.ts';
import {
  fillTimeOf,
  hoursOf,
  judgeHours,
  judgeQueue,
  judgeUsers,
  missingOfService,
  queueOf,
  servedOf,
} from './service.ts';

/** What one adult lifts with a kind, with the printed points that it was taken between. */
function flowOf(kind: PumpKindData, lift: PumpQuantity): PumpQuantity | undefined {
  const at = flowAt(kind.flow, lift.value);
  if (!at) return undefined;
  const points: PumpQuantityInput[] = at.points.flatMap(({ liftM, flowM3h }, index) => [
    { symbol: `H${index + 1}`, value: liftM, unit: 'm', from: 'kind' },
    { symbol: `Q${index + 1}`, value: flowM3h, unit: 'm³/h', from: 'kind' },
  ]);
  const [first] = at.points;
  const source = first?.source ?? pumpSources.common;
  const deeper = first !== undefined && !at.printed && lift.value > first.liftM;
  const formula = deeper
    ? 'Q = Q1 · H1 / H'
    : at.points.length === 1
      ? 'Q = Q1'
      : 'Q = Q1 + (Q2 − Q1) · (H − H1) / (H2 − H1)';
  return quantity('flowM3h', at.flowM3h, formula, [fromQuantity('H', lift), ...points], source);
}

/** A flow beyond the printed lifts is reckoned, and said to be. */
function judgeFlow(kind: PumpKindData, lift: PumpQuantity, flow: PumpQuantity) {
  if (flowAt(kind.flow, lift.value)?.printed !== false) return [];
  const values = { liftM: lift.value, flow: flow.value };
  return [speaksAgainst('flowReckoned', 'notes', values, flow.source)];
}

/** How a hand pump serves: flow at the lift, hours of pumping, queue, users. */
export function judgeByHand(kind: PumpKindData, basis: PumpBasis): Aspect {
  const { lift, need, safeRate, users, inputs } = basis;
  const missing = missingOfService(basis);
  const ofUsers = users ? judgeUsers(kind, users) : [];
  const flow = lift && flowOf(kind, lift);
  if (!flow) return { ...lacks(...missing), reasons: ofUsers };
  const reckoned = judgeFlow(kind, lift, flow);
  if (!safeRate || !need || !users)
    return { missing, reasons: [...reckoned, ...ofUsers], quantities: [flow] };
  const supply = { flow, safeRate, need };
  const [hours, queue] = [hoursOf(supply), queueOf(supply)];
  const most = givenOrAssumed(inputs, 'hoursMost').value;
  const { source } = pumpAssumptions.hoursMost;
  const gives = { flow: flow.value, rate: safeRate.value };
  const less =
    flow.value > safeRate.value
      ? [speaksAgainst('wellGivesLess', 'notes', gives, pumpSources.common)]
      : [];
  return {
    ...nothing,
    reasons: [
      ...judgeHours(hours, supply, { most, ofAnyPump: most, source }),
      ...judgeQueue(queue),
      ...ofUsers,
      ...less,
      ...reckoned,
    ],
    quantities: [flow, hours, fillTimeOf(supply), queue, servedOf(supply, kind, basis)],
  };
}
