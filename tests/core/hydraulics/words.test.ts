import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { languages } from '../../../core/base/language.ts';
import { missingGlyph, runsOf } from '../../../core/base/text/metrics.ts';
import * as codes from '../../../core/hydraulics/codes.ts';
import {
  hydraulicsWords,
  sayAssumption,
  sayCheck,
  sayEstimate,
  sayFigure,
  sayHint,
} from '../../../core/hydraulics/sayHydraulics.ts';
import { safeRate } from '../../../core/hydraulics/safeRate/safeRate.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { readFonts } from '../../../electron/files/fonts.ts';
import { fileNames, well } from '../../demo-data/wells.ts';
import { analyse } from './inRecord.ts';

/** All texts of a language under their keys. */
function texts(language: (typeof languages)[number]): Map<string, string> {
  const found = new Map<string, string>();
  const walk = (at: string, value: unknown): void => {
    if (typeof value === 'string') found.set(at, value);
    else for (const [key, below] of Object.entries(value as object)) walk(`${at}.${key}`, below);
  };
  walk('', hydraulicsWords(language));
  return found;
}

const placesOf = (text: string) => [...text.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();

/** What all demo wells make the room say. */
function said(language: (typeof languages)[number]): string[] {
  return fileNames.flatMap((name) => {
    const one = well(name);
    const answer = safeRate(one, resolveWell(one), { waterOverIntakeM: 1, waterOverScreenM: 0.5 });
    const safe = answer.known ? [answer.value] : [];
    const results = [...analyse(one).flatMap((test) => test.results), ...safe];
    return [
      ...results.flatMap(({ checks }) => checks.map((check) => sayCheck(check, language))),
      ...results.flatMap(({ assumptions }) => assumptions.map((a) => sayAssumption(a, language))),
      ...analyse(one).flatMap(({ hints }) => hints.map((hint) => sayHint(hint, language))),
    ];
  });
}

describe('the words of pumping tests', () => {
  it('name the same values in each language', () => {
    const english = texts('en');
    for (const language of languages)
      for (const [key, text] of texts(language))
        expect(placesOf(text), `${language} ${key}`).toEqual(placesOf(english.get(key)!));
  });

  it('are other in each language, except for names', () => {
    const [en, fr, pt] = languages.map(texts);
    const alike = [...en!].filter(
      ([key, text]) =>
        !key.startsWith('.sources') && (text === fr!.get(key) || text === pt!.get(key)),
    );
    expect(alike).toEqual([]);
  });

  it.each(languages)('say what the demo wells show in %s, no value left open', (language) => {
    const sentences = said(language);
    expect(sentences.length).toBeGreaterThan(100);
    expect(sentences.filter((one) => /[{}]|NaN|undefined/.test(one))).toEqual([]);
  });

  it('have a glyph for each letter in a shipped font', () => {
    const fonts = readFonts().metrics;
    const all = languages.flatMap((language) => [
      ...texts(language).values(),
      sayFigure(1.2e-7, language),
    ]);
    const lacksGlyph = (text: string) =>
      runsOf(fonts, 'regular', text).some((run) => run.text.includes(missingGlyph));
    expect(all.filter(lacksGlyph)).toEqual([]);
  });
});

describe('a code', () => {
  const folder = path.join(import.meta.dirname, '../../../core/hydraulics');
  const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts') && !/^words|codes\.ts$/.test(name))
    .map((name) => readFileSync(path.join(folder, name), 'utf8'))
    .join('\n');
  const all = Object.entries(codes).flatMap(([list, ids]) => ids.map((id) => [list, id] as const));

  it.each(all)('of %s is used: %s', (_, id) => {
    expect(source.includes(`'${id}'`) || source.includes(`${id}:`)).toBe(true);
  });
});

describe('a figure', () => {
  it('has three digits and no more', () => {
    expect(sayFigure(58.291, 'en')).toBe('58.3');
    expect(sayFigure(1234.5, 'fr')).toBe('1230');
    expect(sayFigure(0.01924, 'pt')).toBe('0,0192');
    expect(sayFigure(0, 'en')).toBe('0');
    expect(sayFigure(-0.5, 'en')).toBe('-0.5');
    expect(sayFigure(5.488e-5, 'fr').replaceAll('\u00a0', ' ')).toBe('5,49 × 10⁻⁵');
  });

  it('stands with its interval and unit', () => {
    const estimate = { id: 'transmissivity', value: 58.29, unit: 'm²/d' } as const;
    const interval = { lowest: 57.61, highest: 58.99, level: 0.95, basis: 'regression' } as const;
    const plain = (text: string) => text.replaceAll('\u00a0', ' ');
    expect(plain(sayEstimate(estimate, 'en'))).toBe('58.3 m²/d');
    expect(plain(sayEstimate({ ...estimate, interval }, 'fr'))).toBe('58,3 (57,6–59) m²/j');
    const open = { lowest: 57.61, level: 0.95, basis: 'regression' } as const;
    expect(plain(sayEstimate({ ...estimate, interval: open }, 'en'))).toBe('58.3 (≥ 57.6) m²/d');
    expect(sayEstimate({ id: 'storage', value: 0.01, unit: '1' }, 'en')).toBe('0.01');
  });
});
