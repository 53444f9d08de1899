// @vitest-environment jsdom
import { all, button, clear, click, openFolder, said, show, texts } from '../mounted.ts';
import './noSizes.ts';
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { speech } from '../../../renderer/state/language.svelte.ts';
import Levels from '../../../renderer/water/Levels.svelte';

const demo = JSON.parse(readFileSync('demo-data/hand-drilled-32m.json', 'utf8')) as WellRecord;
const rest = { datum: 'ground', state: 'static' } as const;
let folder: Folder;

function lay(record: Partial<WellRecord>) {
  folder = openFolder(record);
  show(Levels, { folder });
}
/** The rows of all tables, their cells in a line each. */
const rows = () =>
  all('tbody tr').map((row) => [...row.children].map((cell) => said(cell)).join(' '));
afterEach(async () => {
  speech.language = 'en';
  await clear();
  folder.saving.stop();
});

describe('the levels of a well', () => {
  it('are brought from the casing’s top to the ground, each with its datum and state', () => {
    lay(demo);
    // Read 10.27 m below a casing that stands 0.45 m above the ground.
    expect(rows()).toContain('2025-11-17 07:00 +00:00 at rest 10.27 casing top 9.82');
    expect(texts('figcaption')).toEqual(['Levels over time']);
  });

  it('tell rest on its day, and the dry season as it was said', () => {
    lay(demo);
    expect(rows()[0]).toBe('water level at rest 9.86 m 2025-12-04 06:50 +00:00');
    expect(rows()[1]).toBe('water level at rest in the dry season 12.50 m as said in the record');
  });

  it('lead to the field of the dry season where nothing tells it', async () => {
    lay({ levels: [{ ...rest, reading: 8, at: '2025-11-20' }] });
    expect(said(document.body)).toContain('Nothing tells the level of the dry season');
    await click(button('Go to the field'));
    expect(folder.goal?.path).toBe('layingOut.drySeasonLevel');
  });

  it('estimate the dry season from the swing, with what that takes for granted', () => {
    lay({
      levels: [{ ...rest, reading: 8 }],
      layingOut: { seasonalSwing: 3 },
    });
    expect(rows()[1]).toMatch(/dry season 11\.00 m estimated from the swing of the year$/);
    expect(texts('li').join(' ')).toContain('taken as the highest of the year');
    expect(texts('figcaption')).toEqual([]);
  });

  it('are said in the language in use', () => {
    speech.language = 'pt';
    lay(demo);
    expect(said(document.body)).toContain('topo do');
    expect(texts('figcaption')).toEqual(['Níveis ao longo do tempo']);
  });
});
