import { dayOf, minutesBetween } from '../moment.ts';
import { phrase } from '../phrases/phrase.ts';
import type { WellRecord } from '../schema.ts';
import { troubleAt, type Trouble } from '../trouble.ts';

/** A day or a moment and where it stands. */
interface Dated {
  readonly path: string;
  readonly at: string | undefined;
}

/** Moments are compared as such; where either is a day alone, by their days. */
function isBefore(a: string, b: string): boolean {
  const minutes = minutesBetween(a, b);
  return minutes === undefined ? dayOf(a) < dayOf(b) : minutes > 0;
}

function notBefore(later: Dated, earlier: Dated): Trouble[] {
  if (later.at === undefined || earlier.at === undefined) return [];
  if (!isBefore(later.at, earlier.at)) return [];
  const values = { at: later.at, other: earlier.path, otherAt: earlier.at };
  return [troubleAt(later.path, phrase('before', values))];
}

/**
 * Days and moments out of order within one row. What must come before what in the life of the well
 * is a rule of the practice.
 */
export function checkDates({ development, quality, disinfection }: WellRecord): Trouble[] {
  const pair = (path: string, first: Dated, last: Dated) =>
    notBefore(
      { ...last, path: `${path}.${last.path}` },
      { ...first, path: `${path}.${first.path}` },
    );
  return [
    ...(development ?? []).flatMap(({ startedAt, endedAt }, at) =>
      pair(
        `development[${at}]`,
        { path: 'startedAt', at: startedAt },
        { path: 'endedAt', at: endedAt },
      ),
    ),
    ...(quality ?? []).flatMap(({ takenAt, receivedAt }, at) =>
      pair(
        `quality[${at}]`,
        { path: 'takenAt', at: takenAt },
        { path: 'receivedAt', at: receivedAt },
      ),
    ),
    ...(disinfection ?? []).flatMap(({ at: begun, pumpedOffAt }, at) =>
      pair(
        `disinfection[${at}]`,
        { path: 'at', at: begun },
        { path: 'pumpedOffAt', at: pumpedOffAt },
      ),
    ),
  ];
}
