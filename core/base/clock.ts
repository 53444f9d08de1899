/** `7:05`, `07:05:30`, `7h05`, `7 h`; hours, minutes and seconds. */
const clock = /^(\d{1,2})\s*(?:[:hH]\s*(\d{1,2})?)(?:\s*[:mM]\s*(\d{1,2}))?\s*$/;

/** Minutes since midnight of a time as a watch shows it; undefined where it is none. */
export function readClock(text: string): number | undefined {
  const parts = clock.exec(text.trim());
  if (!parts) return undefined;
  const [hours, minutes, seconds] = parts.slice(1).map((part) => Number(part ?? 0));
  if (hours! > 23 || minutes! > 59 || seconds! > 59) return undefined;
  return hours! * 60 + minutes! + seconds! / 60;
}
