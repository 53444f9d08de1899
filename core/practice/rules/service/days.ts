import { dayOf, minutesBetween } from '../../../record/moment.ts';

const minutesPerDay = 24 * 60;
const msPerDay = minutesPerDay * 60_000;

/**
 * Days from one moment to another, with their part where both have a time; where either is a day
 * alone, whole days of the calendar. Negative where the other came first.
 */
export function daysBetween(from: string, to: string): number {
  const minutes = minutesBetween(from, to);
  if (minutes !== undefined) return minutes / minutesPerDay;
  return Math.round((Date.parse(dayOf(to)) - Date.parse(dayOf(from))) / msPerDay);
}

export function isBefore(one: string, other: string): boolean {
  return daysBetween(other, one) < 0;
}

const minuteLength = 'YYYY-MM-DDThh:mm'.length;

/** A moment as people read it: the day, and the time to the minute where one was written. */
export function readable(at: string): string {
  return at.slice(0, minuteLength).replace('T', ' ');
}
