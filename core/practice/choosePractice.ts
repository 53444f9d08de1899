import type { WellRecord } from '../record/schema.ts';
import type { DrillingMethod } from '../record/bore.ts';
import { holdPractice } from './holdPractice.ts';
import type { Practice, PracticeFile } from './practice.ts';
import { shippedPractices } from './shippedPractices.ts';

const machines: readonly (DrillingMethod | undefined)[] = ['airRotary', 'downTheHoleHammer'];

function generalFor({ bore }: WellRecord): string {
  return machines.includes(bore?.method) ? 'machineRock' : 'handDrilled';
}

/**
 * The practice that a well is judged by: the one that its record names, else the general one for
 * its way of drilling. A named one that is not there gives way to the general one.
 */
export function practiceOf(record: WellRecord, own: readonly PracticeFile[] = []): Practice {
  const general = generalFor(record);
  const named = holdPractice(record.identity?.practice ?? general, [...own, ...shippedPractices]);
  if (named.ok) return named.value;
  const held = holdPractice(general, shippedPractices);
  if (!held.ok) throw new Error(held.error.sentence);
  return held.value;
}
