import { readClock } from '../../base/clock.ts';
import type { Minutes } from '../results.ts';

const minutesPerDay = 1440;

const plain = /^\d+(?:[.,]\d+)?$/;

/** Minutes as they are written alone, with point or comma; undefined where they are not. */
export function readMinutes(text: string): Minutes | undefined {
  const written = text.trim();
  return plain.test(written) ? Number(written.replace(',', '.')) : undefined;
}

/**
 * Times of readings, as clock times or as minutes, to minutes since the start. A clock time that
 * is earlier than the one before it (or than the start) is of the next day; `startedAt` is the
 * clock time of the start, else the first clock time is. What cannot be read is undefined.
 */
export function minutesOf(
  times: readonly string[],
  startedAt?: string,
): readonly (Minutes | undefined)[] {
  let startMin = startedAt === undefined ? undefined : readClock(startedAt);
  let lastMin = startMin ?? -Infinity;
  return times.map((text) => {
    const ofDay = readClock(text);
    if (ofDay === undefined) return readMinutes(text);
    startMin ??= ofDay;
    let minutes = ofDay;
    while (minutes < lastMin) minutes += minutesPerDay;
    lastMin = minutes;
    return minutes - startMin;
  });
}
