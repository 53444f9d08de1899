import { say } from '../../parts/words.ts';
import { absent, readAs, unread, type Reading } from '../../state/field.ts';
import { offsetHere } from '../../state/moments.ts';
import type { EntryField, Extras } from './entryField.ts';

/** A clock's time as in `14:05`, or `14h05` as French and Portuguese write it. */
const momentShape = /^(\S+?)[T ]\s*(\d\d?)[:h](\d\d)(?::(\d\d)(?:\.\d+)?)? ?(Z|[+-]\d\d:?\d\d)?$/i;
const dayFirst = /^(\d\d?)([./-])(\d\d?)\2(\d{4})$/;

/** True for days of the calendar only: the 30th of February is not one. */
function isDay(text: string): boolean {
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}

/**
 * A day year first, or day first as English, French and Portuguese write it: `9/3/2025` is the
 * ninth of March. Undefined for anything else, and for days that the calendar lacks.
 */
function dayOf(text: string): string | undefined {
  const [, day = '', , month = '', year] = dayFirst.exec(text) ?? [];
  const written =
    year === undefined ? text : `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return /^\d{4}-\d\d-\d\d$/.test(written) && isDay(written) ? written : undefined;
}

export function readDay(text: string): Reading {
  const trimmed = text.trim();
  if (trimmed === '') return absent;
  const day = dayOf(trimmed);
  return day === undefined ? unread(say.reading.day(trimmed)) : readAs(day);
}

function offsetOf(written: string | undefined, local: string): string {
  if (written === undefined) return offsetHere(new Date(local));
  if (written.toUpperCase() === 'Z') return 'Z';
  return written.includes(':') ? written : `${written.slice(0, 3)}:${written.slice(3)}`;
}

/**
 * Reads a day, or a day with a time; a time without an offset is one on this computer's clock.
 * The day alone stays a day: no time is invented for it.
 */
export function readMoment(text: string): Reading {
  const trimmed = text.trim();
  if (trimmed === '') return absent;
  const alone = dayOf(trimmed);
  if (alone !== undefined) return readAs(alone);
  const [, written = '', hour = '', minute, seconds, offset] = momentShape.exec(trimmed) ?? [];
  const day = dayOf(written);
  const local = `${day}T${hour.padStart(2, '0')}:${minute}:${seconds ?? '00'}`;
  if (day === undefined || Number.isNaN(new Date(local).getTime()))
    return unread(say.reading.moment(trimmed));
  return readAs(`${local}${offsetOf(offset, local)}`);
}

/** As written, with its own offset: the reading stands in the time of the place. */
export function writeMoment(value: unknown): string {
  const [, day, hour = '', minute, seconds, offset] = momentShape.exec(String(value)) ?? [];
  if (day === undefined || minute === undefined) return String(value);
  const tail = seconds === undefined || seconds === '00' ? '' : `:${seconds}`;
  return `${day} ${hour}:${minute}${tail} ${offset ?? ''}`.trim();
}

export function dayField(name: string, label: string, extras: Extras = {}): EntryField {
  return { name, label, control: 'line', ...extras, read: readDay, write: String };
}

export function momentField(name: string, label: string, extras: Extras = {}): EntryField {
  return {
    name,
    label,
    control: 'line',
    roomy: true,
    ...extras,
    read: readMoment,
    write: writeMoment,
  };
}
