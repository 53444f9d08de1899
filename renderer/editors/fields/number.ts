import { decimalMarks } from '../../../core/base/language.ts';
import { say } from '../../parts/words.ts';
import { speech } from '../../state/language.svelte.ts';
import { absent, readAs, unread, type Reading } from '../../state/field.ts';
import type { EntryField, Extras } from './entryField.ts';
import { readMeasure } from './measure.ts';

export interface Limits {
  readonly least?: number;
  readonly most?: number;
  readonly whole?: boolean;
}

const plainNumber = /^[+-]?(\d+(\.\d*)?|\.\d+)$/;

function limited(text: string, value: number, { least, most, whole }: Limits): Reading {
  if (whole && !Number.isInteger(value)) return unread(say.reading.whole(text));
  if (least !== undefined && value < least) return unread(say.reading.least(text, least));
  if (most !== undefined && value > most) return unread(say.reading.most(text, most));
  return readAs(value);
}

/** Reads a number that may have a unit behind it, and gives it in the field's own unit. */
export function readAmount(text: string, limits: Limits = {}, unit = ''): Reading {
  const measure = readMeasure(text, unit);
  if (measure?.ok) return limited(text.trim(), measure.value as number, limits);
  return measure ?? readNumber(text, limits);
}

/** Reads a number with a decimal point or comma; a mark for thousands is refused, not guessed. */
export function readNumber(text: string, limits: Limits = {}): Reading {
  const trimmed = text.trim().replace('−', '-');
  if (trimmed === '') return absent;
  if ((trimmed.match(/[.,]/g) ?? []).length > 1) return unread(say.reading.twoMarks(trimmed));
  const plain = trimmed.replace(',', '.');
  if (!plainNumber.test(plain)) return unread(say.reading.number(trimmed));
  return limited(trimmed, Number(plain), limits);
}

/** All digits that the record holds, with the language's decimal mark; never in powers of ten. */
export function writeNumber(value: unknown): string {
  if (typeof value !== 'number') return String(value);
  const short = String(value);
  const plain = short.includes('e') ? value.toFixed(12).replace(/0+$/, '') : short;
  return plain.replace('.', decimalMarks[speech.language]);
}

export function numberField(
  name: string,
  label: string,
  { unit, ...extras }: Extras = {},
  limits: Limits = {},
): EntryField {
  return {
    name,
    label,
    control: 'line',
    figures: true,
    ...(unit === undefined ? {} : { unit }),
    ...extras,
    read: (text) => readAmount(text, limits, unit),
    write: writeNumber,
  };
}

/** Metres below ground: negative above it. */
export function depthField(name: string, label: string, extras: Extras = {}): EntryField {
  return numberField(name, label, { unit: 'm', ...extras });
}

/** A measure that cannot be less than nothing. */
export function amountField(
  name: string,
  label: string,
  unit: string,
  extras: Extras = {},
): EntryField {
  return numberField(name, label, { unit, ...extras }, { least: 0 });
}

export function countField(name: string, label: string): EntryField {
  return numberField(name, label, {}, { least: 0, whole: true });
}
