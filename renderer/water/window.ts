import { setAt } from '../state/edit.ts';
import type { Desk } from '../state/desk.ts';
import { liesIn } from '../state/selection.ts';

/** Minutes of a straight part as the record keeps it. */
export interface Window {
  readonly from: number;
  readonly to: number;
}

export const windowPath = (index: number) => `tests[${index}].window`;

/**
 * Lays a straight part into the record, or takes it out; what was typed for it and not read goes
 * with the one that was there.
 */
export function layWindow({ record, typed }: Desk, index: number, window?: Window): Desk {
  const path = windowPath(index);
  return {
    record: setAt(record, path, window),
    typed: Object.fromEntries(Object.entries(typed).filter(([key]) => !liesIn(key, path))),
  };
}
