import { expect, it } from 'vitest';
import { searchWords } from '../../../../core/base/text/searchWords.ts';

it.each([
  ['KA-012', ['ka', '012']],
  ['  L’École   de Lémo', ['l', 'ecole', 'de', 'lemo']],
  ['Le\u0301mo', ['lemo']],
  ['ɔ̃kú', ['ɔku']],
  ['bœuf, Straße', ['boeuf', 'strasse']],
  ['“—” *', []],
])('the words of %j are compared as %j', (text, words) => {
  expect(searchWords(text)).toEqual(words);
});
