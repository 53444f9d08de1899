// @vitest-environment jsdom
import { afterEach, expect, it } from 'vitest';
import { button, clear, click, one, openFolder, settled, show, texts } from '../mounted.ts';
import type { PageHost } from '../../../core/contract/host.ts';
import RevisionsDialog from '../../../renderer/revisions/RevisionsDialog.svelte';

HTMLDialogElement.prototype.showModal = function showModal() {
  this.open = true;
};

afterEach(clear);

it('revisions are compared, and an older one stands again with a reason', async () => {
  const asked: [string, Record<string, unknown>][] = [];
  const line = { changedAt: '2025-03-01T10:00:00Z', hash: '', author: 'Sena Abalo' };
  const lines = [1, 2, 3].map((revision) => ({ ...line, revision, reason: `why ${revision}` }));
  const values: Record<string, unknown> = {
    'wells.revisions': lines,
    'wells.compare': ['Depth reached: 31 m, before 30 m'],
    'wells.revert': { revision: 4 },
  };
  const host = {
    send(name: string, args: Record<string, unknown>) {
      asked.push([name, args]);
      return Promise.resolve({ ok: true, value: values[name] });
    },
    onEvent: () => () => undefined,
  } as unknown as PageHost;
  show(RevisionsDialog, { host, folder: openFolder({}, false), onclosed: () => undefined });
  await settled();
  expect(texts('tbody tr')[0]).toMatch(/^3.*Sena Abalo.*why 3$/);
  expect(texts('li')).toEqual(['Depth reached: 31 m, before 30 m']);
  await click(one('[aria-label="Compare from revision 1"]'));
  expect(asked.at(-1)).toEqual([
    'wells.compare',
    expect.objectContaining({ before: 1, now: 3, language: 'en' }),
  ]);
  await click(button('Make a new revision of 1'));
  const reason = 'Restored from revision 1';
  expect(asked).toContainEqual(['wells.revert', expect.objectContaining({ revision: 1, reason })]);
  expect(texts('[role=status]')).toEqual(['Revision 1 stands again, as revision 4.']);
  const field = one('.restore input');
  field.value = 'The level was misread ';
  field.dispatchEvent(new Event('input', { bubbles: true }));
  await click(one('[aria-label="Compare from revision 2"]'));
  await click(button('Make a new revision of 2'));
  expect(asked).toContainEqual([
    'wells.revert',
    expect.objectContaining({ revision: 2, reason: 'The level was misread' }),
  ]);
});
