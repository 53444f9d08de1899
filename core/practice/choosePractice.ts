import type { Result } from '../base/result.ts';
import type { WellRecord } from '../record/schema.ts';
import type { DrillingMethod } from '../record/bore.ts';
import { holdPractice } from './holdPractice.ts';
import type { Practice, PracticeFile } from './practice.ts';
import { shippedPractices } from './shippedPractices.ts';

const machines: readonly (DrillingMethod | undefined)[] = ['airRotary', 'downTheHoleHammer'];

function generalFor({ bore }: WellRecord): string {
  return machines.includes(bore?.method) ? 'machineRock' : 'handDrilled';
}

const none: readonly PracticeFile[] = [];

/** Practices by the files that they were held from: many wells are judged by the same ones. */
const held = new WeakMap<readonly PracticeFile[], Map<string, Result<Practice>>>();

function heldFrom(id: string, own: readonly PracticeFile[]): Result<Practice> {
  const byId = held.get(own) ?? new Map<string, Result<Practice>>();
  held.set(own, byId);
  const practice = byId.get(id) ?? holdPractice(id, [...own, ...shippedPractices]);
  byId.set(id, practice);
  return practice;
}

/**
 * The practice that a well is judged by: the one that its record names, else the general one for
 * its way of drilling. A named one that is not there gives way to the general one. The same list of
 * files, which nobody may change, gives the very same practice.
 */
export function practiceOf(record: WellRecord, own: readonly PracticeFile[] = none): Practice {
  const general = generalFor(record);
  const named = heldFrom(record.identity?.practice ?? general, own);
  if (named.ok) return named.value;
  const instead = heldFrom(general, none);
  if (!instead.ok) throw new Error(instead.error.sentence);
  return instead.value;
}
