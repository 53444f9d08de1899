import { describe, expect, test } from 'vitest';
import { languages } from '../../../core/base/language.ts';
import { comparedParts } from '../../../core/layingOut/differences.ts';
import { missingInputs, obstacleCodes, whyCodes } from '../../../core/layingOut/proposal.ts';
import { layingOutWords } from '../../../core/layingOut/sayLayingOut.ts';
import { proposalKinds } from '../../../core/record/layingOut.ts';

function placesIn(text: string): string[] {
  return [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!).sort();
}

describe.each(languages)('in %s', (language) => {
  const words = layingOutWords(language);

  test('every kind, reason, obstacle, input and part has its words', () => {
    const all = [
      ...proposalKinds.map((kind) => words.kinds[kind]),
      ...whyCodes.map((code) => words.why[code]),
      ...obstacleCodes.map((code) => words.obstacles[code]),
      ...missingInputs.map((what) => words.missing[what]),
      ...comparedParts.map((part) => words.parts[part]),
    ];
    for (const text of all) expect(text.trim().length).toBeGreaterThan(2);
  });

  test('a sentence names the same values as in English', () => {
    const english = layingOutWords('en');
    for (const code of whyCodes)
      expect(placesIn(words.why[code])).toEqual(placesIn(english.why[code]));
    for (const code of obstacleCodes)
      expect(placesIn(words.obstacles[code])).toEqual(placesIn(english.obstacles[code]));
  });
});
