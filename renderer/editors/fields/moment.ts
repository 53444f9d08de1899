import { say } from '../../parts/words.ts';
import { absent, readAs, unread, type Reading } from '../../state/field.ts';
import { offsetHere } from '../../state/moments.ts';
import type { EntryField, Extras } from './entryField.ts';

const momentShape =
  /^(\d{4}-\d\d-\d\d)[T ](\d\d?:\d\d)(?::(\d\d)(?:\.\d+)?)? ?(Z|[+-]\d\d:?\d\d)?$/i;

/** True for days of the calendar only: the 30th of February is not one. */
function isDay(text: string): boolean {
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}

export function readDay(text: string): Reading {
  const trimmed = text.trim();
  if (trimmed === '') return absent;
  const day = /^\d{4}-\d\d-\d\d$/.test(trimmed) && isDay(trimmed);
  return day ? readAs(trimmed) : unread(say.reading.day(trimmed));
}

function offsetOf(written: string | undefined, local: string): string {
  if (written === undefined) return offsetHere(new Date(local));
  if (written.toUpperCase() === 'Z') return 'Z';
  return written.includes(':') ? written : `${written.slice(0, 3)}:${written.slice(3)}`;
}

/** Reads a date with a time; without an offset it is a time on this computer's clock. */
export function readMoment(text: string): Reading {
  const trimmed = text.trim();
  if (trimmed === '') return absent;
  const [, day, time, seconds, offset] = momentShape.exec(trimmed) ?? [];
  if (day === undefined || time === undefined || !isDay(day))
    return unread(say.reading.moment(trimmed));
  const local = `${day}T${time.padStart(5, '0')}:${seconds ?? '00'}`;
  if (Number.isNaN(new Date(local).getTime())) return unread(say.reading.moment(trimmed));
  return readAs(`${local}${offsetOf(offset, local)}`);
}

/** As written, with its own offset: the reading stands in the time of the place. */
export function writeMoment(value: unknown): string {
  const [, day, time, seconds, offset] = momentShape.exec(String(value)) ?? [];
  if (day === undefined || time === undefined) return String(value);
  const tail = seconds === undefined || seconds === '00' ? '' : `:${seconds}`;
  return `${day} ${time}${tail} ${offset ?? ''}`.trim();
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
