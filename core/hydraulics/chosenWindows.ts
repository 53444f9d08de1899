import type { WellRecord } from '../record/schema.ts';
import type { HandWindow } from './results.ts';

/**
 * The straight parts that a person chose, by index of the test. An end that is not written lies
 * open, and one that lies before the other is taken for it.
 */
export function chosenWindows({ tests = [] }: WellRecord): Readonly<Record<number, HandWindow>> {
  const chosen = tests.flatMap(({ window }, index): [number, HandWindow][] => {
    const { from, to } = window ?? {};
    if (from === undefined && to === undefined) return [];
    const [one, other] = [from ?? 0, to ?? Infinity];
    return [[index, { fromMin: Math.min(one, other), toMin: Math.max(one, other) }]];
  });
  return Object.fromEntries(chosen);
}
