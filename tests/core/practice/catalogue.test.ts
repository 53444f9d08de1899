import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/base/finding.ts';
import { modelFindings, type ModelFindingCode } from '../../../core/model/findings.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import { catalogueOf, sayFinding } from '../../../core/practice/catalogue.ts';
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
  it('has a text for every code that the model says, and none that nobody says', () => {
    expect([...codesInSource()].sort()).toEqual(Object.keys(texts).sort());
  });

  it('names only values that the finding carries', () => {
    for (const code of codes) {
      const [, ...names] = modelFindings[code];
      const all = Object.values(texts[code]).join(' ');
      for (const [, place = ''] of all.matchAll(/\{(\w+)\}/g))
        expect(['fromM', 'toM', ...names], `${code}: ${place}`).toContain(place);
    }
  });

  it('has whole sentences, titles of a few words and no two titles for one thing', () => {
    for (const [code, { title, sentence, why, todo }] of Object.entries(texts)) {
      for (const one of [sentence, why, todo]) expect(one, code).toMatch(/[.]$/);
      expect(title, code).toMatch(/^[A-Z][^.]{5,48}$/);
    }
  });

  it('throws on a code that it does not know, which is a defect', () => {
    expect(() => sayFinding({ ...finding('log.gap', {}), code: 'log.nonsense' })).toThrow(
      'log.nonsense',
    );
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
    const check = (finding: Finding) =>
      expect(Object.values(sayFinding(finding)).join(' '), finding.code).not.toMatch(
        /[{}]|undefined|NaN/,
      );
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
