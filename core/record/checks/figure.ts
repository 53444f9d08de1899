import { phrase } from '../phrases/phrase.ts';
import { troubleAt, type Trouble } from '../trouble.ts';

/** One figure and where it stands. */
export interface Placed {
  readonly path: string;
  readonly value: number | undefined;
}

/** A trouble where the first figure is less than the second; none where either is unknown. */
export function notLess(
  first: Placed,
  second: Placed,
  fault: 'lessThan' | 'above' | 'finerThan',
): Trouble[] {
  if (first.value === undefined || second.value === undefined) return [];
  if (first.value >= second.value) return [];
  const values = { figure: first.value, other: second.path, otherFigure: second.value };
  return [troubleAt(first.path, phrase(fault, values))];
}
