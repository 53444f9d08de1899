import { choiceWords } from '../../parts/words.ts';
import { say } from '../../parts/words.ts';
import { absent, readAs, unread, type Reading } from '../../state/field.ts';
import type { EntryField, Extras } from './entryField.ts';

/** Key in the record to the word that stands for it; the order is the one offered. */
export type Choices = Readonly<Record<string, string>>;

/** Reads a word, its beginning where only one word begins so, or the record's own key. */
export function readChoice(text: string, choices: Choices): Reading {
  const wanted = text.trim().toLowerCase();
  if (wanted === '' || wanted === say.table.choose) return absent;
  const entries = Object.entries(choices);
  const exact = entries.find(
    ([key, word]) => word.toLowerCase() === wanted || key.toLowerCase() === wanted,
  );
  if (exact) return readAs(exact[0]);
  const [first, second, ...more] = entries.filter(([, word]) =>
    word.toLowerCase().startsWith(wanted),
  );
  if (first && !second) return readAs(first[0]);
  if (!first || !second) return unread(say.reading.choice(text.trim()));
  const words = [first, second, ...more].slice(0, 4).map(([, word]) => word);
  return unread(say.reading.several(text.trim(), words.join(', ')));
}

function choices(name: string, label: string, words: Choices, extras: Extras) {
  return {
    name,
    label,
    options: Object.values(words),
    ...extras,
    read: (text: string) => readChoice(text, words),
    write: (value: unknown) => words[String(value)] ?? String(value),
  };
}

/** A short list, opened to choose from. */
export function choiceField(
  name: string,
  label: string,
  words: Choices,
  extras: Extras = {},
): EntryField {
  return { ...choices(name, label, words, extras), control: 'choice' };
}

/** A long list, completed as it is typed. */
export function suggestField(
  name: string,
  label: string,
  words: Choices,
  extras: Extras = {},
): EntryField {
  return { ...choices(name, label, words, extras), control: 'suggest' };
}

/** Yes, no, or not known. */
export function flagField(name: string, label: string): EntryField {
  const { yes, no } = choiceWords.yesNo;
  return {
    ...choiceField(name, label, choiceWords.yesNo),
    read: (text) => {
      const reading = readChoice(text, choiceWords.yesNo);
      return reading.ok && reading.value !== undefined ? readAs(reading.value === 'yes') : reading;
    },
    write: (value) => (value ? yes : no),
  };
}
