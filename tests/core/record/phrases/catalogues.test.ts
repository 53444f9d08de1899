import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import type { PhraseCode } from '../../../../core/record/phrases/phrase.ts';
import { phrasesOf } from '../../../../core/record/phrases/sayPhrase.ts';
import { lacksGlyph } from './glyphs.ts';

const record = path.resolve(import.meta.dirname, '../../../../core/record');
const english = phrasesOf('en');
const codes = Object.keys(english) as PhraseCode[];
const others = languages.filter((language) => language !== 'en');

/** The sources of the record, but for the catalogues themselves. */
function sources(): string {
  return readdirSync(record, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && !/phrases\/(english|french|portuguese)/.test(file))
    .map((file) => readFileSync(path.join(record, file), 'utf8'))
    .join('\n');
}

const placesIn = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();

it('the English phrases are all used', () => {
  const written = sources();
  expect(codes.filter((code) => !written.includes(`'${code}'`))).toEqual([]);
});

describe.each(others)('the phrases in %s', (language) => {
  const phrases = phrasesOf(language);

  it('name the same values as the English ones', () => {
    for (const code of codes)
      expect(placesIn(phrases[code]), code).toEqual(placesIn(english[code]));
  });

  it('leave no English standing', () => {
    for (const code of codes) {
      const bare = phrases[code].replace(/\{\w+\}/g, '');
      expect(bare, code).not.toMatch(/\b(the|is|of|than|write|field|here|such|text)\b/);
    }
  });

  it('write their examples with their own decimal mark', () => {
    for (const code of codes) expect(phrases[code], code).not.toMatch(/\d\.\d/);
    expect(phrases.hintDepth).toContain('12,5');
  });

  it('have a glyph for each letter in a shipped font', () => {
    expect(codes.filter((code) => lacksGlyph(phrases[code]))).toEqual([]);
  });
});
