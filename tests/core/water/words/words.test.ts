import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import { noteCodes } from '../../../../core/water/quality/noteCodes.ts';
import { sayNote, sayReference, waterWords } from '../../../../core/water/sayWater.ts';
import { sources } from '../../../../core/water/sources.ts';

/** Every text under a tree of words, by its path. */
function textsOf(words: object, path = ''): [string, string][] {
  return Object.entries(words).flatMap(([key, value]): [string, string][] =>
    typeof value === 'string'
      ? [[`${path}.${key}`, value]]
      : textsOf(value as object, `${path}.${key}`),
  );
}

const places = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();

describe.each(languages)('the words in %s', (language) => {
  const texts = textsOf(waterWords(language));
  const english = new Map(textsOf(waterWords('en')));

  it('are written, each with the places that the English one has', () => {
    for (const [path, text] of texts) {
      expect(text, path).toMatch(/\S/);
      expect(places(text), path).toEqual(places(english.get(path)!));
    }
  });

  it('never call water fit to drink', () => {
    const claims =
      /\b(is|are) safe|safe to drink|potable|drinkable|sans danger|sans risque|buvable|eau sûre|é segura|água segura|potável|bebível/i;
    for (const [path, text] of texts) expect(text, path).not.toMatch(claims);
  });

  it('name every value of a note', () => {
    for (const [code, names] of Object.entries(noteCodes)) {
      const notes: Readonly<Record<string, string>> = waterWords(language).quality.notes;
      expect(places(notes[code]!)).toEqual(names.map((name) => `{${name}}`).sort());
    }
  });

  it('have a title for every source', () => {
    for (const { title } of Object.values(sources)) expect(title[language]).toMatch(/\S/);
  });
});

it('sentences bear their values with the language’s decimal mark', () => {
  const note = {
    code: 'sample.aging',
    path: 'quality[0].receivedAt',
    values: { hours: 6.52, goodHours: 6 },
  } as const;
  expect(sayNote(note, 'en')).toContain('after 6.5');
  expect(sayNote(note, 'fr')).toContain('après 6,5');
  const reference = { days: 50, stands: 'spans', source: sources.fiftyDays } as const;
  expect(sayReference(reference, 'pt')).toMatch(/menos ou mais de 50/);
});
