import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import { sheetWordsIn } from '../../../../core/drawing/words/languages.ts';
import type { Forms, SheetWords } from '../../../../core/drawing/words/words.ts';

/** Every string within a value, with the keys that lead to it. */
function stringsIn(value: unknown, at = ''): [string, string][] {
  if (typeof value === 'string') return [[at, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => stringsIn(inner, `${at}.${key}`));
}

const others = languages.filter((language) => language !== 'en');

/** Adjectives that stand beside the name of a material. */
function adjectivesOf(words: SheetWords): string[] {
  const { materials, grains, weathering, moisture, fractured } = words;
  const seconds = Object.values(materials).map(({ second }) => second);
  return [
    ...seconds.filter((second) => !second.includes(' ')),
    ...Object.values(grains),
    ...Object.values(weathering),
    ...Object.values(moisture),
    fractured,
  ];
}

/**
 * Spelled alike from old on or by loan: rocks, units, signs, and names that two languages share.
 */
const alike =
  /^(granite|gneiss|schist|quartzite|rhyolite|saprolite|phyllite|amphibolite|quartz|laterite|basalt|percussion|Document|Photos?|Programme|Position|Date|ratio|WGS 84|Ø|h|m|mm|d10 d60|min|min\/m|N|S|E|:|)$/;

describe.each(others)('the words of the sheets in %s', (language) => {
  const words = sheetWordsIn(language);
  const english = new Map(stringsIn(sheetWordsIn('en')));

  it('are no English ones', () => {
    const left = stringsIn(words).filter(
      ([at, says]) => english.get(at) === says && !alike.test(says),
    );
    expect(left).toEqual([]);
  });

  it('have no empty word where English has one', () => {
    const empty = stringsIn(words).filter(([at, says]) => says === '' && english.get(at) !== '');
    expect(empty).toEqual([]);
  });

  it('turn every adjective for each kind of noun, and know no form for another', () => {
    const adjectives = adjectivesOf(words);
    expect(Object.keys(words.agreement).sort()).toEqual([...new Set(adjectives)].sort());
    for (const { feminine, plural } of Object.values<Forms>(words.agreement)) {
      expect(feminine).not.toBe('');
      expect(plural).toMatch(/[sx]$/);
    }
  });

  it('keep the amount of a second material beside its name', () => {
    for (const amount of Object.values(words.amounts)) expect(amount).toContain('{what}');
  });

  it('say their own language and mark', () => {
    expect([words.language, words.decimalMark]).toEqual([language, ',']);
  });
});
