import { fieldWords, say, sheetWords } from '../../parts/words.ts';
import { absent, readAs, type Reading, type Starts } from '../../state/field.ts';
import { choiceField, codesByWord, readChoice } from './choice.ts';
import type { EntryField, Extras } from './entryField.ts';
import { folded } from './folded.ts';

/** Fields that say what the ground is, from samples and log alike. */

type Words = Readonly<Record<string, string>>;

const codes = () => say.codes.materials;

const wordsOf = (form: 'noun' | 'second'): Words =>
  Object.fromEntries(
    Object.entries(sheetWords().materials).map(([key, words]) => [key, words[form]]),
  );

/** Signs of a degree in a short code. */
const signs = { '-': 'slightly', '+': 'very' } as const;

function secondOf(part: string): string {
  const degree = signs[part[0] as keyof typeof signs];
  if (degree === undefined) return part;
  return `${sheetWords().degrees[degree]} ${part.slice(1).trim()}`;
}

/**
 * A material with second materials behind strokes: `s/c` is sand with clay, `s/-c` with a little,
 * `s/+c` with much of it. Undefined where there is no stroke with something behind it.
 */
export function groundParts(text: string): Starts | undefined {
  const [material = '', ...seconds] = text.split('/').map((part) => part.trim());
  const named = seconds.filter((part) => !['', '-', '+'].includes(part));
  if (named.length === 0) return undefined;
  return { material, qualifiers: named.map(secondOf).join('; ') };
}

function afterStroke(text: string): number {
  const at = text.lastIndexOf('/') + 1;
  return at > 0 && (text[at] ?? '') in signs ? at + 1 : at;
}

/** The principal material; with a stroke behind it the second materials too. */
export function materialField(): EntryField {
  const field = choiceField('material', fieldWords.material, wordsOf('noun'), {}, codes());
  return { ...field, parts: groundParts, wordAt: afterStroke };
}

interface Second {
  readonly material: string;
  readonly degree?: string;
}

/** The degree that a second material begins with, as its key and the length of its word. */
function degreeIn(part: string): { key?: string; length: number } {
  for (const [key, word] of Object.entries(sheetWords().degrees))
    if (word !== '' && folded(part).startsWith(`${folded(word)} `))
      return { key, length: word.length };
  return { length: 0 };
}

function readSecond(part: string): Reading {
  const { key, length } = degreeIn(part);
  const name = part.slice(length);
  const noun = readChoice(name, wordsOf('noun'), codes());
  const reading = noun.ok ? noun : readChoice(name, wordsOf('second'));
  if (!reading.ok) return noun;
  return readAs({ material: reading.value, ...(key === undefined ? {} : { degree: key }) });
}

function readSeconds(text: string): Reading {
  const parts = text
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const readings = parts.map(readSecond);
  const bad = readings.find((reading) => !reading.ok);
  if (bad || readings.length === 0) return bad ?? absent;
  return readAs(readings.map((reading) => reading.ok && reading.value));
}

function writeSecond({ material, degree }: Second): string {
  const degrees: Words = sheetWords().degrees;
  const words = [degree && (degrees[degree] ?? degree), wordsOf('noun')[material] ?? material];
  return words.filter(Boolean).join(' ');
}

function lastSecond(text: string): number {
  const at = text.lastIndexOf(';') + 1;
  const blank = text.slice(at).length - text.slice(at).trimStart().length;
  const { length } = degreeIn(text.slice(at + blank));
  return at + blank + (length === 0 ? 0 : length + 1);
}

/** Second materials with semicolons between, as in `sand; slightly clay`. */
export function secondsField(name: string, label: string, extras: Extras = {}): EntryField {
  const nouns = wordsOf('noun');
  return {
    name,
    label,
    control: 'words',
    options: Object.values(nouns),
    codes: codesByWord(nouns, codes()),
    wordAt: lastSecond,
    ...extras,
    read: readSeconds,
    write: (value) => (value as readonly Second[]).map(writeSecond).join('; '),
  };
}
