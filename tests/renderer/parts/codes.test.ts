import { describe, expect, it } from 'vitest';
import { languages } from '../../../core/base/language.ts';
import { sheetWordsIn } from '../../../core/drawing/words/languages.ts';
import { folded } from '../../../renderer/editors/fields/folded.ts';
import { interfaces } from '../../../renderer/parts/words.ts';

const lists = languages.flatMap((language) => {
  const { materials, fills, pieces } = sheetWordsIn(language);
  const nouns = Object.entries(materials).map(([key, { noun }]) => [key, noun] as const);
  const { codes } = interfaces[language];
  return [
    { name: `${language} materials`, words: nouns, codes: codes.materials },
    { name: `${language} fills`, words: Object.entries(fills), codes: codes.fills },
    { name: `${language} pieces`, words: Object.entries(pieces), codes: codes.pieces },
  ].map((list) => ({
    ...list,
    codes: list.codes as Readonly<Record<string, string>>,
    words: list.words.filter(([key]) => key !== 'unrecorded'),
  }));
});

describe('short codes', () => {
  it.each(lists)('of $name are one to three plain letters, one for each word', (list) => {
    expect(Object.keys(list.codes).toSorted()).toEqual(list.words.map(([key]) => key).toSorted());
    for (const code of Object.values(list.codes)) expect(code).toMatch(/^[a-z]{1,3}$/);
  });

  it.each(lists)('of $name are never the same for two words', ({ codes }) => {
    const used = Object.values(codes);
    expect(used.filter((code, at) => used.indexOf(code) !== at)).toEqual([]);
  });

  it.each(lists)('of $name mislead nobody who types the beginning of a word', (list) => {
    const misleading = list.words.flatMap(([key, word]) => {
      const code = list.codes[key] ?? '';
      const others = list.words.filter(
        ([other, named]) => other !== key && folded(named).startsWith(code),
      );
      return others.length > 0 && !folded(word).startsWith(code) ? [`${code}: ${word}`] : [];
    });
    expect(misleading).toEqual([]);
  });
});
