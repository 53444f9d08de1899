// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { all, clear, click, one, openFolder, said, settled, show, texts } from '../mounted.ts';
import type { PracticeFile } from '../../../core/practice/practice.ts';
import { missingOf } from '../../../core/practice/missingOf.ts';
import Findings from '../../../renderer/editors/Findings.svelte';
import { practiceNames } from '../../../renderer/editors/practiceNames.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

afterEach(async () => {
  speech.language = 'en';
  await clear();
});

/** A pit latrine 20 m off, where 30 m are wanted (Sphere, 2018, from memory). */
const near = { site: { surroundings: [{ kind: 'latrine' as const, distance: 20 }] } };

describe('the findings of a well that is judged by a practice', () => {
  it('stand among the others with their source, which the record’s own do not need', () => {
    const folder = openFolder({
      ...near,
      log: [
        { from: 0, to: 1 },
        { from: 2, to: 3 },
      ],
    });
    show(Findings, { folder });
    const sources = all('li')
      .filter((item) => item.querySelector('.finding'))
      .map((item) => [said(item), item.querySelector('.source')?.textContent ?? ''] as const);
    const latrine = sources.find(([text]) => text.includes('latrine'));
    expect(latrine?.[1]).toContain('Sphere Handbook, 2018');
    const gap = sources.find(([text]) => text.startsWith('Look again') && text.includes('1.00 m'));
    expect(gap?.[1]).toBe('');
  });

  it('are followed by what could not be judged, which leads to its field', async () => {
    const folder = openFolder({
      ...near,
      strings: [{ components: [{ kind: 'screen', length: 3 }] }],
    });
    show(Findings, { folder });
    const missing = missingOf(folder.judgement);
    expect(missing.length).toBeGreaterThan(0);
    expect(said(one('.missing summary'))).toBe(`Not judged for want of (${missing.length})`);
    expect(one<HTMLDetailsElement>('.missing').open).toBe(false);
    await click(one('.missing button'));
    expect(folder.selected).toBe(missing[0]?.path);
  });

  it('name the practice, and say where the record names none or one that is not here', async () => {
    const folder = openFolder({});
    show(Findings, { folder });
    expect(said(one('.practice'))).toContain(
      'hand-drilled wells, 1.0. The record names no practice',
    );
    folder.edit((desk) => ({
      ...desk,
      record: { ...desk.record, identity: { practice: 'theirs' } },
    }));
    await settled();
    expect(said(one('.practice'))).toContain('“theirs”, which is not here');
    folder.edit((desk) => ({
      ...desk,
      record: { ...desk.record, identity: { practice: 'machineRock' } },
    }));
    await settled();
    expect(said(one('.practice'))).toBe('Judged by: General: machine-drilled wells in rock, 1.0.');
  });

  it('are said in the language in use', async () => {
    show(Findings, { folder: openFolder(near) });
    speech.language = 'pt';
    await settled();
    expect(said(one('.practice'))).toMatch(/^Avaliado segundo: Geral/);
    expect(texts('.source').join()).toContain('Fonte:');
  });
});

it('practices to choose from bear their id where two are called alike', () => {
  const words = { en: 'Ours', fr: 'Ours', pt: 'Ours' };
  const file = (id: string): PracticeFile => ({
    ...{ id, version: '1', name: words, scope: words, sources: {}, figures: {} },
  });
  const names = practiceNames([file('a'), file('b')]);
  expect([names['a'], names['b'], names['machineRock']]).toEqual([
    'Ours (a)',
    'Ours (b)',
    'General: machine-drilled wells in rock',
  ]);
});
