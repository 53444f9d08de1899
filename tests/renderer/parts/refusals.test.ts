import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { readPractice } from '../../../core/practice/readPractice.ts';
import { readGuidelines } from '../../../core/water/guidelines/readGuidelines.ts';
import { refusalTexts, sayRefusal } from '../../../renderer/parts/refusals.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

const top = path.resolve(import.meta.dirname, '../../..');
/** What a page can hear from; the command line answers in a terminal. */
const rooms = ['core', 'electron', 'renderer/host'];
const silent = ['electron/cli', 'electron/make', 'electron/launch', 'core/exchange/tables'];
/** Tables of data that look like refusals. */
const data = ['core/exchange/ags/groups.ts'];

/** How a refusal comes about in the source; each pattern's first group is the code. */
const makings = [
  /\brefused\(\s*'(\w+)'/g,
  /\brefusedWith\(\s*\d+,\s*'(\w+)'/g,
  /\bUnfit\(\s*'(\w+)'/g,
  /\bcode: '(\w+)',\s*sentence\b/g,
  /^ {2}[A-Z]+: \[\s*'(\w+)',/gm,
  /\bunreachable = '(\w+)'/g,
];

function sources(): string[] {
  const files = rooms.flatMap((room) =>
    readdirSync(path.join(top, room), { recursive: true, encoding: 'utf8' }).map((file) =>
      path.join(room, file),
    ),
  );
  const heard = files.filter((file) => !silent.some((room) => file.startsWith(`${room}/`)));
  return heard.filter((file) => file.endsWith('.ts') && !data.includes(file));
}

const codes = new Set(
  sources().flatMap((file) => {
    const text = readFileSync(path.join(top, file), 'utf8');
    return makings.flatMap((making) => [...text.matchAll(making)].map(([, code]) => code!));
  }),
);

afterEach(() => {
  speech.language = 'en';
});

describe('refusals', () => {
  it.each(['fr', 'pt'] as const)('have a text for every code of the source in %s', (language) => {
    expect(codes.size).toBeGreaterThan(25);
    const texts: Readonly<Record<string, string>> = refusalTexts[language];
    expect([...codes].filter((code) => !texts[code])).toEqual([]);
  });

  it('have no text for a code that no source gives', () => {
    expect(Object.keys(refusalTexts.fr).filter((code) => !codes.has(code))).toEqual([]);
  });

  it('are said in the service’s own words in English', () => {
    expect(sayRefusal({ code: 'noFile', sentence: 'There is no archive a.' })).toBe(
      'There is no archive a.',
    );
  });

  it('are said in the language in use', () => {
    speech.language = 'fr';
    const refusal = { code: 'diskFull', sentence: 'The disk is full.' };
    expect(sayRefusal(refusal)).toMatch(/^Le disque est plein/);
    speech.language = 'pt';
    expect(sayRefusal(refusal)).toMatch(/^O disco está cheio/);
  });

  it('name the places of a file that they speak of, the first of many', () => {
    const read = readPractice({
      id: 'ours',
      version: '1',
      name: 'Ours',
      scope: 'x',
      figures: { a: 1 },
      tint: 2,
    });
    if (read.ok) throw new Error('it was read');
    expect(read.error.at).toEqual(['figures.a', 'tint']);
    expect(sayRefusal(read.error)).toContain('figures.a: there is no such figure');
    speech.language = 'fr';
    expect(sayRefusal(read.error)).toMatch(/À corriger dans le fichier : figures\.a, tint\.$/);
    speech.language = 'pt';
    const many = { ...read.error, at: Array.from({ length: 9 }, (_, at) => `without[${at}]`) };
    expect(sayRefusal(many)).toMatch(
      /A corrigir no ficheiro: without\[0\], .*without\[5\] e mais 3 lugares\.$/,
    );
    const set = readGuidelines({ id: 'ours', parameters: 3 });
    if (set.ok) throw new Error('it was read');
    expect(sayRefusal(set.error)).toContain('A corrigir no ficheiro: ');
    expect(set.error.at).toContain('parameters');
  });

  it('are said in English sooner than not at all', () => {
    speech.language = 'pt';
    expect(sayRefusal({ code: 'unheardOf', sentence: 'Not done.' })).toBe('Not done.');
  });
});
