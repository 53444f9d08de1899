import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
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

  it('are said in English sooner than not at all', () => {
    speech.language = 'pt';
    expect(sayRefusal({ code: 'unheardOf', sentence: 'Not done.' })).toBe('Not done.');
  });
});
