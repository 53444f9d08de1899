import { say } from '../../parts/words.ts';
import { absent, readAs, unread } from '../../state/field.ts';
import type { EntryField } from './entryField.ts';
import { readNumber, writeNumber } from './number.ts';

const partsOf = (text: string) =>
  text
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** Numbers with semicolons between, since the comma may be a decimal mark. */
export function numbersField(name: string, label: string, unit: string): EntryField {
  return {
    name,
    label,
    unit,
    control: 'line',
    read: (text) => {
      const parts = partsOf(text);
      if (parts.length === 0) return absent;
      const readings = parts.map((part) => readNumber(part, { least: 0 }));
      return readings.every((reading) => reading.ok)
        ? readAs(readings.map(({ value }) => value))
        : unread(say.reading.list(text.trim()));
    },
    write: (value) => (Array.isArray(value) ? value.map(writeNumber).join('; ') : ''),
  };
}
