// @vitest-environment jsdom
import { clear, one, settled, show, texts } from '../mounted.ts';
import { afterEach, expect, it } from 'vitest';
import type { Language } from '../../../core/base/language.ts';
import SecondLanguage from '../../../renderer/sheet/SecondLanguage.svelte';

afterEach(clear);

it('offers one language alone, or another than the first beside it', async () => {
  const chosen: (Language | undefined)[] = [];
  show(SecondLanguage, {
    first: 'fr',
    second: undefined,
    onChosen: (language: Language | undefined) => chosen.push(language),
  });
  expect(texts('option')).toEqual(['one language', 'English', 'Português']);
  const select = one<HTMLSelectElement>('select');
  for (const value of ['pt', '']) {
    select.value = value;
    select.dispatchEvent(new Event('change', { bubbles: true }));
    await settled();
  }
  expect(chosen).toEqual(['pt', undefined]);
});
