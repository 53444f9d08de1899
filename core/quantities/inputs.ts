import type { RecordPath } from '../base/recordPath.ts';
import type { FigureId } from '../practice/figures.ts';
import { figures } from '../practice/figures.ts';
import type { Practice } from '../practice/practice.ts';
import type { Quantity, QuantityInput } from './quantity.ts';

/** An input that the practice sets. */
export function fromFigure(symbol: string, id: FigureId, { figures: held }: Practice) {
  return { symbol, value: held[id].value, unit: figures[id], from: { figure: id } } as const;
}

/** An input as it stands in the record. */
export function fromRecord(
  symbol: string,
  value: number,
  unit: string,
  path: RecordPath,
): QuantityInput {
  return { symbol, value, unit, from: { path } };
}

/** An input as it was resolved from the record. */
export function fromModel(symbol: string, value: number, unit: string): QuantityInput {
  return { symbol, value, unit, from: 'model' };
}

/** Another quantity as input. */
export function fromQuantity(symbol: string, { id, value, unit }: Quantity): QuantityInput {
  return { symbol, value, unit: unit === 'litres' ? 'L' : unit, from: { quantity: id } };
}

const lowered = '₀₁₂₃₄₅₆₇₈₉';

/** A symbol that counts: `V` and 12 become `V₁₂`. */
export function counted(symbol: string, nth: number): string {
  return symbol + [...String(nth)].map((digit) => lowered[Number(digit)]).join('');
}

/** A value as the record tells it for this well, or the practice's where the record is silent. */
export function recordOrFigure(
  symbol: string,
  value: number | undefined,
  path: RecordPath,
  id: FigureId,
  practice: Practice,
): QuantityInput {
  return value !== undefined && value > 0
    ? fromRecord(symbol, value, figures[id], path)
    : fromFigure(symbol, id, practice);
}
