import type { Trouble } from '../trouble.ts';
import { troubleAt } from '../trouble.ts';

/** A figure as a person compares it: 8 stands as 8.0, thousandths at most. */
export function figure(value: number): string {
  const text = String(Math.round(value * 1000) / 1000);
  return text.includes('.') ? text : `${text}.0`;
}

/** One figure and where it stands. */
export interface Placed {
  readonly path: string;
  readonly value: number | undefined;
}

/** A trouble where the first figure is less than the second; none where either is unknown. */
export function notLess(first: Placed, second: Placed, word: string): Trouble[] {
  if (first.value === undefined || second.value === undefined) return [];
  if (first.value >= second.value) return [];
  return [
    troubleAt(
      first.path,
      `${figure(first.value)} is ${word} ${second.path} ${figure(second.value)}`,
    ),
  ];
}
