/** Dates and times as they are typed and shown: ISO 8601 with a space, to the minute. */

const two = (n: number) => String(n).padStart(2, '0');

/** Offset of this computer's clock from UTC at a moment, as in `+01:00`. */
export function offsetHere(date: Date): string {
  const minutes = -date.getTimezoneOffset();
  const size = Math.abs(minutes);
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** A moment on this computer's clock, as in `2025-03-09 14:05`. */
export function shownMoment(iso: string): string {
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return iso;
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())} ${shownTime(iso)}`;
}

/** The time of day alone, as in `14:05`. */
export function shownTime(iso: string): string {
  const date = new Date(iso);
  return `${two(date.getHours())}:${two(date.getMinutes())}`;
}
