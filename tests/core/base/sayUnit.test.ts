import { expect, it } from 'vitest';
import { sayUnit } from '../../../core/base/sayUnit.ts';

it('counts of colonies have the letters of each language, other units none of their own', () => {
  expect(sayUnit('CFU/100 ml', 'en')).toBe('CFU/100 ml');
  expect(sayUnit('CFU/100 ml', 'fr')).toBe('UFC/100 ml');
  expect(sayUnit('CFU/100 ml', 'pt')).toBe('UFC/100 ml');
  expect(sayUnit('UFC/100 ml', 'en')).toBe('CFU/100 ml');
  expect(sayUnit('mg/l', 'fr')).toBe('mg/l');
});

it('days are told by the letter of each language', () => {
  const all = ['m²/d', 'm³/d', 'd/m²', 'd²/m⁵'];
  expect(all.map((unit) => sayUnit(unit, 'fr'))).toEqual(['m²/j', 'm³/j', 'j/m²', 'j²/m⁵']);
  expect(all.map((unit) => sayUnit(unit, 'pt'))).toEqual(all);
  expect(sayUnit('°dH', 'fr')).toBe('°dH');
  expect(sayUnit('mg/dm3', 'fr')).toBe('mg/dm3');
});
