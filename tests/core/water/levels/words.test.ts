import { expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import { dryAssumptionCodes } from '../../../../core/practice/reading/season/dryEstimate.ts';
import { levelWords, sayDryAssumption } from '../../../../core/water/levels/sayLevels.ts';

it('says what an estimate rests on in a sentence, in every language', () => {
  for (const code of dryAssumptionCodes) {
    const said = languages.map((language) => sayDryAssumption(code, language));
    expect(new Set(said).size).toBe(languages.length);
    for (const sentence of said) expect(sentence).toMatch(/\.$/);
  }
});

it('leaves no word out', () => {
  for (const language of languages)
    for (const group of Object.values(levelWords(language)))
      for (const word of Object.values(group)) expect(word).not.toBe('');
});
