import { writeNumber } from '../fields/number.ts';
import type { Starts } from '../../state/field.ts';

function textOf(row: unknown, name: string): string {
  const value = (row as Record<string, unknown> | undefined)?.[name];
  return typeof value === 'number' ? writeNumber(value) : '';
}

/** The next row begins where the last one ended; the first one at the ground. */
export function fromWhereItEnded(rows: readonly unknown[]): Starts {
  return { from: rows.length === 0 ? '0' : textOf(rows.at(-1), 'to') };
}
