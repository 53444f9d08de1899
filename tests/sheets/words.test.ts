import { describe, expect, it } from 'vitest';
import { faceIds, missingGlyph } from '../../core/base/text/metrics.ts';
import { languages } from '../../core/base/language.ts';
import { checkPageWordsIn } from '../../core/drawing/papers/checkPage/words.ts';
import { committeeWordsIn } from '../../core/drawing/papers/committee/words/languages.ts';
import { layingOutWordsIn } from '../../core/drawing/papers/layingOut/words/languages.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import { qualityWordsIn } from '../../core/drawing/papers/asBuilt/words/qualityLanguages.ts';
import { testWordsIn } from '../../core/drawing/papers/asBuilt/words/testLanguages.ts';
import { catalogueOf } from '../../core/practice/catalogue.ts';
import { drawSheet } from './drawn.ts';
import { strangeLetters } from './examples/strangeLetters.ts';
import { faceHas } from './measure.ts';
import { textsOn } from './placed.ts';

/** Every string within a value, with the keys that lead to it. */
function stringsIn(value: unknown, at: string): [string, string][] {
  if (typeof value === 'string') return [[at, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => stringsIn(inner, `${at}.${key}`));
}

const lacking = (text: string) =>
  [...text].filter((one) => one.trim() !== '' && !faceIds.some((face) => faceHas(face, one)));

describe.each(languages)('every word that a sheet prints of its own in %s', (language) => {
  const own = [
    ...stringsIn(sheetWordsIn(language), 'words'),
    ...stringsIn(layingOutWordsIn(language), 'layingOut'),
    ...stringsIn(checkPageWordsIn(language), 'checkPage'),
    ...stringsIn(committeeWordsIn(language), 'committee'),
    ...stringsIn(testWordsIn(language), 'tests'),
    ...stringsIn(qualityWordsIn(language), 'quality'),
  ];
  const words = [...own, ...stringsIn(catalogueOf(language), 'catalogue')];

  it('has a glyph for each letter in a shipped font', () => {
    const wrong = words.filter(([, text]) => lacking(text).length > 0);
    expect(words.length).toBeGreaterThan(400);
    expect(wrong).toEqual([]);
  });

  it('needs no fallback in the regular and the bold face', () => {
    for (const face of ['regular', 'bold'] as const) {
      const wrong = own.filter(([, text]) =>
        [...text].some((letter) => !/\s/.test(letter) && !faceHas(face, letter)),
      );
      expect(wrong).toEqual([]);
    }
  });
});

describe('letters that no shipped font has', () => {
  const { drawing } = drawSheet(strangeLetters(), 'A4');
  /** What the first page that shows a field says of it. */
  const textOf = (source: string) => {
    const pages = drawing.pages.map((page) =>
      textsOn(page).filter((one) => one.source === source && !one.groups.includes('ground')),
    );
    const first = pages.find(({ length }) => length > 0) ?? [];
    return first.map(({ item }) => item.text).join('');
  };

  it('each show as a box, in the title block, the log and the notes', () => {
    expect(textOf('identity.number')).toBe(`E-08 ${missingGlyph.repeat(4)}`);
    expect(textOf('identity.name')).toBe(`${missingGlyph.repeat(3)} ${missingGlyph.repeat(6)}`);
    expect(textOf('log[0]')).toContain(`мелкий, ${missingGlyph.repeat(2)}`);
    expect(textOf('notes')).toBe(missingGlyph.repeat(4));
  });

  it('do not hide those that one has, composed and from the fallback', () => {
    expect(textOf('identity.supervisor')).toBe(`Yamélia ${missingGlyph}`);
    expect(textOf('identity.client')).toMatch(/^Ŋorivé Ɓirassolé ƙẹ/);
  });
});
