// @vitest-environment jsdom
import { all, button, clear, click, one, settled, show, texts } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { HostEvent } from '../../../core/contract/events.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import type { Settings } from '../../../core/contract/settingsShape.ts';
import Look from '../../../renderer/parts/Look.svelte';
import { say } from '../../../renderer/parts/words.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';
import { preferences } from '../../../renderer/state/preferences.svelte.ts';

let kept: Settings;
let written: unknown[];
let tell: (event: HostEvent) => void;

/** A host that keeps settings and nothing else. */
const host = {
  send: (name: string, args: Settings) => {
    if (name === 'settings.write') written.push(args);
    kept = { ...kept, ...args };
    return Promise.resolve({ ok: true, value: kept });
  },
  onEvent: (listener: typeof tell) => {
    tell = listener;
    return () => undefined;
  },
} as unknown as PageHost;

async function start(settings: Settings, browserLanguages: readonly string[] = ['en-GB']) {
  [kept, written] = [settings, []];
  await preferences.follow(host, browserLanguages);
  show(Look, {});
}

async function choose(language: string) {
  one<HTMLSelectElement>('select').value = language;
  one('select').dispatchEvent(new Event('change', { bubbles: true }));
  await settled();
}

beforeEach(() => {
  preferences.contrast = 'system';
  preferences.tablesPercent = 50;
});
afterEach(async () => {
  await clear();
  speech.language = 'en';
});

describe('the choice of a language', () => {
  it('names each language in itself, marked as that language', async () => {
    await start({});
    expect(texts('option')).toEqual(['English', 'Français', 'Português']);
    expect(all('option').map((each) => each.lang)).toEqual(['en-GB', 'fr-FR', 'pt-PT']);
  });

  it('is the browser’s first that the program speaks, until one is chosen', async () => {
    await start({}, ['sw', 'pt-BR', 'fr']);
    expect([speech.language, one('select').value]).toEqual(['pt', 'pt']);
    expect(written).toEqual([]);
  });

  it('is the one chosen before, whatever the browser speaks', async () => {
    await start({ language: 'fr' }, ['pt']);
    expect(speech.language).toBe('fr');
  });

  it('speaks at once and is kept', async () => {
    await start({});
    await choose('fr');
    expect(say.folder.save).toBe('Enregistrer');
    expect(written).toEqual([{ language: 'fr' }]);
    expect(one('select').getAttribute('aria-label')).toBe('Langue');
  });

  it('follows what is chosen in another window', async () => {
    await start({});
    tell({ name: 'settings.changed', data: { language: 'pt', contrast: 'high' } });
    await settled();
    expect([one('select').value, preferences.contrast]).toEqual(['pt', 'high']);
  });
});

describe('the choice of high contrast', () => {
  it('is a button that says whether it is pressed', async () => {
    await start({});
    expect(button('Contrast').getAttribute('aria-pressed')).toBe('false');
    await click(button('Contrast'));
    expect(button('Contrast').getAttribute('aria-pressed')).toBe('true');
    expect([preferences.contrast, written]).toEqual(['high', [{ contrast: 'high' }]]);
  });

  it('goes back to what the computer asks for', async () => {
    await start({ contrast: 'high' });
    await click(button('Contrast'));
    expect(written).toEqual([{ contrast: 'system' }]);
  });
});

describe('the width of the tables', () => {
  it('is taken up and kept', async () => {
    await start({ tablesPercent: 40 });
    expect(preferences.tablesPercent).toBe(40);
    preferences.widen(44);
    expect([preferences.tablesPercent, written]).toEqual([44, [{ tablesPercent: 44 }]]);
  });
});
