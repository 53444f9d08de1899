import { describe, expect, it } from 'vitest';
import { languageFor } from '../../../core/base/language.ts';

describe('the language for what a computer prefers', () => {
  it('is the first that the program speaks, whatever the region', () => {
    expect(languageFor(['pt-MZ', 'en'])).toBe('pt');
    expect(languageFor(['sw', 'FR-bf', 'en'])).toBe('fr');
  });

  it('is English where none is spoken, or none is said', () => {
    expect(languageFor(['sw-TZ'])).toBe('en');
    expect(languageFor([])).toBe('en');
  });

  it('takes no other language that begins alike', () => {
    expect(languageFor(['fry', 'ptx'])).toBe('en');
  });
});
