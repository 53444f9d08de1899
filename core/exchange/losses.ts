import { writePath, type PathStep, type RecordPath } from '../base/recordPath.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Loss } from './outgoing.ts';

/** Fields that a format holds, as kinds of place: `log[].from`; a chapter stands for all of it. */
export type Carried = ReadonlySet<string>;

interface Walk {
  readonly carried: Carried;
  /** Every kind of place on the way to one that is carried. */
  readonly onTheWay: ReadonlySet<string>;
  readonly found: RecordPath[];
}

function waysTo(carried: Carried): Set<string> {
  const ways = new Set<string>();
  for (const kind of carried)
    for (
      let end = kind.length;
      end > 0;
      end = Math.max(kind.lastIndexOf('.', end - 1), kind.lastIndexOf('[', end - 1))
    )
      ways.add(kind.slice(0, end));
  return ways;
}

const childKind = (kind: string, step: PathStep) =>
  typeof step === 'number' ? `${kind}[]` : kind === '' ? step : `${kind}.${step}`;

function walk(value: unknown, steps: PathStep[], kind: string, to: Walk): void {
  if (value === undefined || to.carried.has(kind)) return;
  const isGroup = typeof value === 'object' && value !== null;
  if (!isGroup || (kind !== '' && !to.onTheWay.has(kind))) {
    to.found.push(writePath(steps));
    return;
  }
  const entries = Array.isArray(value)
    ? value.map((entry, at) => [at, entry] as const)
    : Object.entries(value);
  for (const [step, entry] of entries) walk(entry, [...steps, step], childKind(kind, step), to);
}

/**
 * Where a record holds something that a format does not carry; a chapter of which it carries
 * nothing is named as a whole.
 */
export function notCarried(record: WellRecord, carried: Carried): RecordPath[] {
  const to: Walk = { carried, onTheWay: waysTo(carried), found: [] };
  walk(record, [], '', to);
  return to.found;
}

/** What a well is called in a loss. */
export function nameOf({ identity }: WellRecord): string {
  return identity?.number ?? identity?.id ?? identity?.name ?? '';
}

/** Collects what a format loses of one well. */
export interface Losing {
  readonly losses: readonly Loss[];
  lose(path: RecordPath, sentence: string): void;
}

/** Begins with what the format does not carry at all. */
export function losingOf(record: WellRecord, carried: Carried, format: string): Losing {
  const well = nameOf(record);
  const sentence = `${format} has no place for it.`;
  const losses: Loss[] = notCarried(record, carried).map((path) => ({ well, path, sentence }));
  return { losses, lose: (path, why) => void losses.push({ well, path, sentence: why }) };
}
