import type { Source } from '../../../practice/practice.ts';
import { pumpAssumptions, type PumpAssumptionId } from '../assumptions.ts';
import {
  pumpQuantityUnits,
  type PumpMissing,
  type PumpQuantity,
  type PumpQuantityId,
  type PumpQuantityInput,
  type Reason,
  type ReasonCode,
  type ReasonEffect,
} from '../ranking.ts';
import type { SaidValues } from '../said.ts';
import type { Known } from '../basis.ts';

/** What one side of a kind tells: what speaks for and against it, what lacks, what was reckoned. */
export interface Aspect {
  readonly reasons: readonly Reason[];
  readonly missing: readonly PumpMissing[];
  readonly quantities: readonly PumpQuantity[];
}

export const nothing: Aspect = { reasons: [], missing: [], quantities: [] };

export function says(...reasons: readonly Reason[]): Aspect {
  return { ...nothing, reasons };
}

export function lacks(...missing: readonly PumpMissing[]): Aspect {
  return { ...nothing, missing };
}

/** Several sides as one. */
export function joined(aspects: readonly Aspect[]): Aspect {
  return {
    reasons: aspects.flatMap(({ reasons }) => reasons),
    missing: aspects.flatMap(({ missing }) => missing),
    quantities: aspects.flatMap(({ quantities }) => quantities),
  };
}

export function speaksFor(
  code: ReasonCode,
  values: SaidValues,
  ...sources: readonly Source[]
): Reason {
  return { code, side: 'for', effect: 'notes', values, sources };
}

export function speaksAgainst(
  code: ReasonCode,
  effect: ReasonEffect,
  values: SaidValues,
  ...sources: readonly Source[]
): Reason {
  return { code, side: 'against', effect, values, sources };
}

export function quantity(
  id: PumpQuantityId,
  value: number,
  formula: string,
  inputs: readonly PumpQuantityInput[],
  source: Source,
): PumpQuantity {
  return { id, value, unit: pumpQuantityUnits[id], formula, inputs, source };
}

export function input(symbol: string, { value, from }: Known, unit: string): PumpQuantityInput {
  return { symbol, value, unit, from };
}

export function fromQuantity(symbol: string, { id, value, unit }: PumpQuantity): PumpQuantityInput {
  return { symbol, value, unit, from: { quantity: id } };
}

export function assumed(symbol: string, id: PumpAssumptionId): PumpQuantityInput {
  const { value, unit } = pumpAssumptions[id];
  return { symbol, value, unit, from: { assumed: id } };
}
