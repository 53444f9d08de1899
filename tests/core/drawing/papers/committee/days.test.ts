import { expect, it } from 'vitest';
import { dayInShort, dayInWords } from '../../../../../core/drawing/papers/committee/days.ts';
import { kitIn } from './kit.ts';

it('a day is said in words as each language says it', () => {
  const on = '2026-05-03T08:00:00+00:00';
  expect(dayInWords(kitIn('en'), on)).toBe('3 May 2026');
  expect(dayInWords(kitIn('fr'), on)).toBe('3 mai 2026');
  expect(dayInWords(kitIn('pt'), on)).toBe('3 de maio de 2026');
});

it('the first of a month is said in the French way', () => {
  expect(dayInWords(kitIn('fr'), '2026-08-01')).toBe('1er août 2026');
});

it('in a narrow place it is short', () => {
  const days = (['en', 'fr', 'pt'] as const).map((one) => dayInShort(kitIn(one), '2025-12-04'));
  expect(days).toEqual(['4 Dec 2025', '4/12/2025', '4-12-2025']);
});

it('what is no day stays as it was written', () => {
  expect(dayInWords(kitIn(), '2026')).toBe('2026');
  expect(dayInShort(kitIn(), 'May')).toBe('May');
});
