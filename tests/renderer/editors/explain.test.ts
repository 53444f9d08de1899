// @vitest-environment jsdom
import { afterEach, describe, expect, it } from 'vitest';
import { all, button, clear, click, one, openFolder, said, settled, show } from '../mounted.ts';
import Explain from '../../../renderer/editors/Explain.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

const finding = {
  code: 'overlap',
  severity: 'error' as const,
  path: 'annulus[1]',
  values: { b: 2, a: 'x' },
};

afterEach(clear);

async function keep(text: string) {
  one('input').value = text;
  one('input').dispatchEvent(new Event('input', { bubbles: true }));
  one<HTMLFormElement>('form').requestSubmit();
  await settled();
}

function lay(folder: Folder) {
  show(Explain, { folder, finding });
  return folder;
}

describe('why a finding stays', () => {
  it('is written beside it, kept in the record, changed and taken away', async () => {
    const folder = lay(openFolder({}));
    await click(button('Explain why it stays …'));
    expect(document.activeElement).toBe(one('input'));
    await keep('  Clay ran out.  ');
    const kept = { code: 'overlap', path: 'annulus[1]', values: 'a=x; b=2' };
    expect(folder.desk.record.explanations).toEqual([{ ...kept, because: 'Clay ran out.' }]);
    expect(said(one('.explained'))).toBe('Explained: Clay ran out.');
    await click(button('Change'));
    expect(one('input').value).toBe('Clay ran out.');
    await keep('No clay on site.');
    expect(folder.desk.record.explanations).toEqual([{ ...kept, because: 'No clay on site.' }]);
    await click(button('Take away'));
    expect(folder.desk.record).not.toHaveProperty('explanations');
  });

  it('is not kept when nothing was written, or the hand thinks again', async () => {
    const folder = lay(openFolder({}));
    await click(button('Explain why it stays …'));
    await keep('   ');
    await click(button('Explain why it stays …'));
    await click(button('Cancel'));
    expect(folder.desk.record.explanations).toBeUndefined();
  });

  it('cannot be written where the archive is read-only', () => {
    lay(openFolder({}, true));
    expect(all('button')).toEqual([]);
  });
});
