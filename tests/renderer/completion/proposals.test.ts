// @vitest-environment jsdom
import { all, button, clear, click, openFolder, settled, show, texts } from '../mounted.ts';
import { afterEach, describe, expect, it, vi } from 'vitest';
import CompletionView from '../../../renderer/completion/CompletionView.svelte';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';

let folder: Folder;

/** Twelve metres of coarse sand under clay, water at 6 m, and pipes that reach. */
const well: Partial<WellRecord> = {
  identity: { state: 'drilled' },
  bore: { depthReached: 24, sections: [{ from: 0, to: 24, diameter: 200 }] },
  log: [
    { from: 0, to: 12, material: 'clay' },
    { from: 12, to: 24, material: 'sand', grain: 'coarse', moisture: 'waterBearing' },
  ],
  levels: [{ reading: 6, datum: 'ground', state: 'static' }],
  layingOut: {
    rate: 1,
    drawdown: 2,
    drySeasonLevel: 7,
    pipes: [
      { kind: 'plain', count: 10, length: 3, outside: 110, wall: 4.2, insertion: 0.1 },
      { kind: 'screen', count: 2, length: 3, outside: 110, wall: 4.2, insertion: 0.1, openArea: 5 },
    ],
  },
};

function lay(record: Partial<WellRecord> = well) {
  folder = openFolder(record);
  show(CompletionView, { folder, view: 'proposals' });
  show(CompletionView, { folder, view: 'differences' });
}
async function propose() {
  await click(button('Propose completions'));
  await vi.waitFor(() => expect(button('Propose completions').disabled).toBe(false));
  await settled();
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
  speech.language = 'en';
});

describe('proposing completions', () => {
  it('shows each with its reason, its pipes from the bottom up and its fills', async () => {
    lay();
    await propose();
    const cards = all('article');
    expect(cards.length).toBeGreaterThan(0);
    for (const card of cards) {
      expect(card.textContent).toMatch(/of screen/);
      const [first] = card.querySelectorAll('tbody tr');
      expect(first?.textContent).toMatch(/^\s*1\s*bottom cap|^\s*1\s*sump/);
      expect(card.textContent).toContain('gravel pack');
      expect(card.textContent).toMatch(/sacks of gravel in all \d+\ssacks/);
    }
  });

  it('takes one into the record, keeps it, and is taken back by undo', async () => {
    lay();
    await propose();
    await click(button('Take this one'));
    const { strings, annulus, layingOut } = folder.desk.record;
    expect(strings).toHaveLength(1);
    expect(layingOut?.proposal?.annulus).toEqual(annulus);
    expect(texts('[role=status]').join()).toContain('The proposal stands in the record now.');
    expect(texts('section p').join()).toContain('Built as laid out.');
    folder.undo();
    expect(folder.desk.record).toEqual({ schemaVersion: 1, ...well });
  });

  it('asks before it replaces what stands in the record', async () => {
    const strings = [{ components: [{ kind: 'plain' as const, length: 3 }] }];
    lay({ ...well, strings });
    await propose();
    await click(button('Take this one'));
    expect(folder.desk.record.strings).toEqual(strings);
    await click(button('Replace'));
    expect(folder.desk.record.strings).not.toEqual(strings);
  });

  it('says what is missing, and leads there', async () => {
    lay({ ...well, log: [] });
    await propose();
    await click(button('log'));
    expect(folder.goal?.path).toBe('log');
  });

  it('says which limit is in the way where nothing meets the practice', async () => {
    lay({ ...well, log: [{ from: 0, to: 24, material: 'clay' }] });
    await propose();
    expect(texts('li').join()).toContain('The log names no ground that conducts water.');
  });

  it('says when the record has changed since', async () => {
    lay();
    await propose();
    folder.edit((desk) => ({ ...desk, record: { ...desk.record, notes: 'x' } }));
    await settled();
    expect(all('article')).toEqual([]);
    expect(texts('[role=status]').join()).toContain('The record has changed since.');
  });
});

describe('what was built against what was laid out', () => {
  it('is told part by part, with the difference', async () => {
    lay();
    await propose();
    await click(button('Take this one'));
    const [string] = folder.desk.record.strings!;
    const set = { by: 'bottom' as const, depth: (string!.set as { depth: number }).depth - 0.3 };
    folder.edit((desk) => ({
      ...desk,
      record: { ...desk.record, strings: [{ ...string!, set }] },
    }));
    await settled();
    const rows = texts('tr.differs');
    expect(rows).toContainEqual(expect.stringMatching(/^foot of the casing.*-0\.30$/));
  });
});
