// @vitest-environment jsdom
import { all, clear, openFolder, said, show, texts } from '../mounted.ts';
import './noSizes.ts';
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import type { WellRecord } from '../../../core/record/schema.ts';
import Development from '../../../renderer/water/Development.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

const demo = JSON.parse(readFileSync('demo-data/hand-drilled-32m.json', 'utf8')) as WellRecord;
let folder: Folder;

function lay(record: Partial<WellRecord>) {
  folder = openFolder(record);
  show(Development, { folder });
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
});

describe('how development went', () => {
  it('is told by criterion, in hours and volumes, and plotted', () => {
    lay(demo);
    expect(texts('.end')[0]).toBe('✓ end of development: met');
    // 3 h at 2.5 and 4 h at 3.2 m³/h.
    expect(said(document.body)).toContain('at least 20.3 m³');
    expect(texts('figcaption')).toEqual([
      'Turbidity and sand at the end of each event',
      'Rate pumped',
    ]);
  });

  it('is not met while the last water is turbid', () => {
    lay({ ...demo, development: demo.development!.slice(0, 2) });
    expect(texts('.end')[0]).toBe('✗ end of development: not met');
    expect(all('tr.fails').length).toBe(2);
  });

  it('says what cannot be placed in time', () => {
    lay({ development: [{ method: 'surging', turbidity: 4 }] });
    expect(said(document.body)).toContain('Events without start and end are not in the plots.');
    expect(all('figure')).toEqual([]);
  });
});
