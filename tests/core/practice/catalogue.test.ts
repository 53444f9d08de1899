import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/base/finding.ts';
import { decimalMarks, languages, type Language } from '../../../core/base/language.ts';
import { modelFindings, type ModelFindingCode } from '../../../core/model/findings.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { catalogueOf, sayFinding } from '../../../core/practice/catalogue.ts';
import { ruleCodes } from '../../../core/practice/rules/ruleCodes.ts';
import { rules } from '../../../core/practice/rules/index.ts';
import { garbageWell } from '../../laws/garbageWell.ts';
import { randomWell } from '../../laws/randomWell.ts';
import { everyFinding } from '../model/everyFinding.ts';
import { record } from '../model/well.ts';

const model = path.resolve(import.meta.dirname, '../../../core/model');
const codes = Object.keys(modelFindings) as ModelFindingCode[];
const { findings: texts } = catalogueOf('en');

function codesInSource(): Set<string> {
  const chapters = ['bore', 'log', 'annulus'];
  const sources = readdirSync(model)
    .filter((file) => file !== 'findings.ts')
    .map((file) => readFileSync(path.join(model, file), 'utf8'));
  const literal = sources.flatMap((source) =>
    [...source.matchAll(/found\(\s*'([^']+)'/g)].map(([, code]) => code ?? ''),
  );
  const made = sources.flatMap((source) =>
    [...source.matchAll(/found\(\s*`\$\{chapter\}\.(\w+)`/g)].flatMap(([, end]) =>
      chapters.map((chapter) => `${chapter}.${end}`),
    ),
  );
  return new Set([...literal, ...made]);
}

const finding = (code: ModelFindingCode, values: Finding['values'], range = {}): Finding => ({
  code,
  severity: modelFindings[code][0],
  path: '',
  values,
  ...range,
});

describe('the catalogue', () => {
  it('has a text for every code that the model or a rule says, and none that nobody says', () => {
    const said = [...codesInSource(), ...rules.map(({ id }) => id)];
    expect(said.sort()).toEqual(Object.keys(texts).sort());
  });

  it('has no rule that is not listed, and lists each once', () => {
    expect(rules.map(({ id }) => id).sort()).toEqual(Object.keys(ruleCodes).sort());
  });

  it.each(languages)('names in a rule only values that it gives in %s', (language) => {
    const { findings } = catalogueOf(language);
    for (const [code, names] of Object.entries<readonly string[]>(ruleCodes)) {
      const all = Object.values(findings[code as keyof typeof findings]).join(' ');
      for (const [, place = ''] of all.matchAll(/\{(\w+)\}/g))
        expect(['fromM', 'toM', ...names], `${code}: ${place}`).toContain(place);
    }
  });

  it.each(languages)('names only values that the finding carries in %s', (language) => {
    for (const code of codes) {
      const [, ...names] = modelFindings[code];
      const all = Object.values(catalogueOf(language).findings[code]).join(' ');
      for (const [, place = ''] of all.matchAll(/\{(\w+)\}/g))
        expect(['fromM', 'toM', ...names], `${code}: ${place}`).toContain(place);
    }
  });

  it.each(languages)('has whole sentences and titles of a few words in %s', (language) => {
    const { findings } = catalogueOf(language);
    for (const [code, { title, sentence, why, todo }] of Object.entries(findings)) {
      for (const one of [sentence, why, todo]) expect(one, code).toMatch(/[.]$/);
      expect(title, code).toMatch(/^\p{Lu}[^.]{5,48}$/u);
    }
  });

  it('throws on a code that it does not know, which is a defect', () => {
    expect(() => sayFinding({ ...finding('log.gap', {}), code: 'log.nonsense' })).toThrow(
      'log.nonsense',
    );
  });
});

const others = languages.filter((language) => language !== 'en');

const placesIn = (text: string) => [...text.matchAll(/\{\w+\}/g)].map(([place]) => place).sort();

describe.each(others)('the catalogue in %s', (language: Language) => {
  const { findings, words } = catalogueOf(language);

  it('names the same values as the English one in each text', () => {
    for (const code of codes)
      for (const part of ['title', 'sentence', 'why', 'todo'] as const)
        expect(placesIn(findings[code][part]), `${code} ${part}`).toEqual(
          placesIn(texts[code][part]),
        );
  });

  it('leaves no English standing', () => {
    for (const code of codes) {
      const said = Object.values(findings[code])
        .join(' ')
        .replace(/\{\w+\}/g, '');
      expect(said, code).not.toMatch(/\b(the|and|is|of|with|from|hole|depth|string|screen)\b/);
      expect(findings[code].title).not.toBe(texts[code].title);
    }
    const { words: english } = catalogueOf('en');
    // A loan that is spelled alike in all three.
    const alike = Object.keys(words).filter(
      (key) => words[key as keyof typeof words] === english[key as keyof typeof words],
    );
    expect(alike).toEqual(['bentonite']);
  });

  it('has no two titles alike but where the English ones are', () => {
    const titles = codes.map((code) => findings[code].title);
    const english = codes.map((code) => texts[code].title);
    expect(new Set(titles).size).toBe(new Set(english).size);
  });

  it('writes every number with its own mark', () => {
    const jam = finding(
      'string.wallTooThick',
      { string: 1.5, piece: 'plain', outsideMm: 110.5, wallMm: 60.25 },
      { fromM: 3.1 },
    );
    const figures = sayFinding(jam, language).sentence.match(/\d+\D\d+/g);
    expect(figures).toEqual(['1,5', '110,5', '60,3']);
    expect(decimalMarks[language]).toBe(',');
  });

  it('uses the words for kinds of its own language', () => {
    const fill = finding('annulus.belowHole', { fill: 'claySeal', depthM: 30 }, { toM: 31 });
    const { sentence } = sayFinding(fill, language);
    expect(sentence.toLowerCase().startsWith(words.claySeal)).toBe(true);
    expect(sentence).toContain('31,00 m');
    expect(sentence).toContain('30,00 m');
  });

  it('lets no line begin or end with a high mark of its own', () => {
    for (const code of codes) {
      const { sentence, why, todo } = sayFinding(finding(code, {}), language);
      expect([sentence, why, todo].join(' '), code).not.toMatch(/ [;:!?»]|« /);
    }
  });
});

describe('a finding in words', () => {
  it('has its depths to the centimetre and its diameters to the tenth', () => {
    const jam = finding(
      'string.widerThanHole',
      { string: 1, outsideMm: 110, holeMm: 101.55 },
      { fromM: 3.1, toM: 12 },
    );
    expect(sayFinding(jam).sentence).toBe(
      'From 3.10 m to 12.00 m string 1 is 110 mm wide in a hole of 101.6 mm.',
    );
  });

  it('starts with a capital also where a kind stands first, and names kinds in words', () => {
    const fill = finding('annulus.belowHole', { fill: 'gravelPack', depthM: 30 }, { toM: 31 });
    expect(sayFinding(fill).sentence).toBe(
      'Gravel pack: it goes on to 31.00 m, but the hole is 30.00 m deep; it is cut there.',
    );
  });

  it('leaves names that people gave as they are', () => {
    const open = finding('string.noPieces', { string: 'open' });
    expect(sayFinding(open).sentence).toMatch(/^String open has no piece/);
  });

  it('leaves no place open, whatever the record', () => {
    const examples = codes.map((code) => record(everyFinding[code]));
    const check = (finding: Finding) => {
      for (const language of languages)
        expect(Object.values(sayFinding(finding, language)).join(' '), finding.code).not.toMatch(
          /[{}]|undefined|NaN/,
        );
    };
    for (const example of examples) resolveWell(example).findings.forEach(check);
    const named = fc.oneof(garbageWell, randomWell).map((well) => ({
      ...well,
      strings: (well.strings ?? []).map((string) => ({ ...string, name: 'main' })),
    }));
    fc.assert(
      fc.property(named, (well) => resolveWell(well).findings.forEach(check)),
      { seed: 5 },
    );
  });
});
