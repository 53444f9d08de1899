import { readClock } from '../../base/clock.ts';

/** How a logger's file writes its dates. */
export type DateOrder = 'ymd' | 'dmy' | 'mdy';
export type TimeUnit = 's' | 'min' | 'h' | 'd';

const minutesOfUnit: Readonly<Record<TimeUnit, number>> = { s: 1 / 60, min: 1, h: 60, d: 1440 };
const minutesPerDay = 1440;
const msPerMinute = 60_000;

/** A time of a row: counted from somewhere (`run`), of some day (`clock`), or of a known day. */
export interface Stamp {
  readonly kind: 'run' | 'clock' | 'moment';
  readonly minutes: number;
}

const dated =
  /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})[T ,]+([\d:hH.,]+)\s*([AaPp][Mm])?(?:Z|[+-]\d\d:?\d\d)?$/;

/** Minutes since midnight, fractions of a second left out; `pm` adds half a day. */
function clockOf(text: string, half: string | undefined): number | undefined {
  const minutes = readClock(text.replace(/[.,]\d+$/, ''));
  if (minutes === undefined || half === undefined) return minutes;
  return (minutes % 720) + (half.toLowerCase() === 'pm' ? 720 : 0);
}

function momentOf(text: string, order: DateOrder): number | undefined {
  const parts = dated.exec(text);
  if (!parts) return undefined;
  const part = (letter: string) => Number(parts[1 + order.indexOf(letter)]);
  const [year, month, day] = [part('y'), part('m'), part('d')];
  const clock = clockOf(parts[4]!, parts[5]);
  const utc = Date.UTC(year, month - 1, day);
  const exists = year >= 1000 && new Date(utc).toISOString().startsWith(dayText(year, month, day));
  return clock === undefined || !exists ? undefined : utc / msPerMinute + clock;
}

const two = (value: number) => String(value).padStart(2, '0');
const dayText = (year: number, month: number, day: number) => `${year}-${two(month)}-${two(day)}`;

/**
 * The time in a cell: a date with a time, a time of the day, or a plain number in a unit. Offsets
 * from UTC are passed over, since only differences count. Undefined where it is none of these.
 */
export function readStamp(
  text: string,
  number: number | undefined,
  { dateOrder, timeUnit }: { readonly dateOrder: DateOrder; readonly timeUnit: TimeUnit },
): Stamp | undefined {
  if (number !== undefined) return { kind: 'run', minutes: number * minutesOfUnit[timeUnit] };
  const clock = readClock(text);
  if (clock !== undefined) return { kind: 'clock', minutes: clock };
  const moment = momentOf(text, dateOrder);
  return moment === undefined ? undefined : { kind: 'moment', minutes: moment };
}

/** Minutes of stamps since the first; clock times go on past midnight. */
export function sinceFirst(stamps: readonly Stamp[]): number[] {
  let last = -Infinity;
  const running = stamps.map(({ kind, minutes }) => {
    let at = minutes;
    while (kind === 'clock' && at < last) at += minutesPerDay;
    last = at;
    return at;
  });
  const first = stamps[0];
  const from = first && first.kind !== 'run' ? first.minutes : 0;
  return running.map((minutes) => minutes - from);
}
