const dayLength = 'YYYY-MM-DD'.length;
const msPerMinute = 60_000;

/** True of a moment that is a day alone: nobody wrote the time. */
export function isDay(at: string): boolean {
  return at.length === dayLength;
}

/** The day of a moment, YYYY-MM-DD, as it was where it was written. */
export function dayOf(at: string): string {
  return at.slice(0, dayLength);
}

/** Minutes from one moment to another; undefined where either is a day alone. */
export function minutesBetween(from: string, to: string): number | undefined {
  if (isDay(from) || isDay(to)) return undefined;
  return (Date.parse(to) - Date.parse(from)) / msPerMinute;
}
