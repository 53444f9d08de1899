import { say } from '../../parts/words.ts';
import { absent, readAs, unread, type Reading } from '../../state/field.ts';
import { readChoice, type Choices } from './choice.ts';
import type { EntryField } from './entryField.ts';
import { readNumber, writeNumber } from './number.ts';

const partsOf = (text: string) =>
  text
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '');

function together(readings: readonly Reading[], otherwise?: string): Reading {
  const bad = readings.find((reading) => !reading.ok);
  if (bad) return otherwise === undefined ? bad : unread(otherwise);
  return readAs(readings.map((reading) => (reading as Extract<Reading, { ok: true }>).value));
}

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
      return together(
        parts.map((part) => readNumber(part, { least: 0 })),
        say.reading.list(text.trim()),
      );
    },
    write: (value) => (Array.isArray(value) ? value.map(writeNumber).join('; ') : ''),
  };
}

interface Second {
  readonly material: string;
  readonly degree?: string;
}

function readSecond(part: string, materials: Choices, degrees: Choices): Reading {
  const degree = Object.entries(degrees).find(
    ([, word]) => word !== '' && part.toLowerCase().startsWith(`${word.toLowerCase()} `),
  );
  const name = degree ? part.slice(degree[1].length) : part;
  const reading = readChoice(name, materials);
  if (!reading.ok) return reading;
  return readAs({ material: reading.value, ...(degree ? { degree: degree[0] } : {}) });
}

/** Second materials, as in `sand; slightly clay`. */
export function secondsField(
  name: string,
  label: string,
  materials: Choices,
  degrees: Choices,
): EntryField {
  const write = ({ material, degree }: Second) =>
    [degree === undefined ? '' : (degrees[degree] ?? degree), materials[material] ?? material]
      .filter((word) => word !== '')
      .join(' ');
  return {
    name,
    label,
    control: 'line',
    read: (text) => {
      const parts = partsOf(text);
      if (parts.length === 0) return absent;
      return together(parts.map((part) => readSecond(part, materials, degrees)));
    },
    write: (value) => (value as readonly Second[]).map(write).join('; '),
  };
}
