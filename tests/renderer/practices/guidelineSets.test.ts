// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { all, button, clear, click, one, said, settled, show, texts } from '../mounted.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import { admitGuidelines } from '../../../core/water/guidelines/admitGuidelines.ts';
import type { GuidelineFile } from '../../../core/water/guidelines/guidelineSet.ts';
import { readGuidelines } from '../../../core/water/guidelines/readGuidelines.ts';
import GuidelineSets from '../../../renderer/practices/GuidelineSets.svelte';
import { Guidelines } from '../../../renderer/state/guidelines.svelte.ts';

/** An invented decree. */
const decree = {
  id: 'decree',
  version: '1',
  name: 'Decree',
  basedOn: 'who2022',
  sources: { annex: { title: 'Annex 2', mark: 'read' } },
  parameters: {
    nitrate: { values: { health: { bound: 'most', value: 45, basis: 'health', source: 'annex' } } },
  },
};

let kept: Map<string, GuidelineFile>;

/** Answers as the service does, from what is kept here. */
const host = {
  async send(name: string, args: { set?: unknown; id?: string }) {
    if (name === 'guidelines.remove') kept.delete(args.id!);
    if (name === 'guidelines.put') {
      const read = readGuidelines(args.set);
      const admitted = read.ok ? admitGuidelines(read.value, [...kept.values()]) : read;
      if (!read.ok || !admitted.ok) return admitted;
      kept.set(read.value.id, read.value);
    }
    const sets = [...kept.values()].map((file) => ({ file, changedAt: '' }));
    return { ok: true, value: { sets, unread: [] } };
  },
} as unknown as PageHost;

beforeEach(() => (kept = new Map()));
afterEach(clear);

const lay = (readOnly = false) =>
  show(GuidelineSets, { guidelines: new Guidelines(host), readOnly });

async function give(text: string) {
  const files = [{ text: async () => text }];
  Object.defineProperty(one('[type=file]'), 'files', { value: files, configurable: true });
  one('[type=file]').dispatchEvent(new Event('change', { bubbles: true }));
  await settled();
}
const status = () => said(one('[role=status]'));

describe('guideline values of the user', () => {
  it('come from a file, which says where it is wrong', async () => {
    lay();
    await give(JSON.stringify({ ...decree, parameters: { nitrate: { limit: 45 } } }));
    expect(said(one('[role=alert]'))).toContain('parameters.nitrate.limit: there is no such key');
    await give('{"id"');
    expect(said(one('[role=alert]'))).toContain('This is not JSON');
    await give(JSON.stringify({ ...decree, id: 'who2022' }));
    await expect.poll(() => said(one('[role=alert]'))).toContain('comes with the program');
    await give(JSON.stringify(decree));
    await expect.poll(status).toBe('“Decree” was taken from the file.');
    expect(texts('li')[0]).toMatch(/^Decree 1/);
  });

  it('are replaced and deleted only after a question', async () => {
    lay();
    await give(JSON.stringify(decree));
    await expect.poll(() => kept.size).toBe(1);
    await give(JSON.stringify({ ...decree, version: '2' }));
    await expect.poll(status).toContain('Replace it with version 2');
    await click(button('Replace it'));
    await expect.poll(() => kept.get('decree')?.version).toBe('2');
    await expect.poll(() => texts('li')[0]).toMatch(/^Decree 2/);
    await click(button('Delete'));
    await click(button('Keep it'));
    expect(kept.size).toBe(1);
    await click(button('Delete'));
    await click(button('Delete it'));
    await expect.poll(status).toBe('“Decree” was deleted.');
    expect(all('li')).toHaveLength(1);
  });

  it('stay as they are in an archive that can only be read', () => {
    lay(true);
    expect(button('Import values …').disabled).toBe(true);
  });
});
