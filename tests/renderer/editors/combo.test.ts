// @vitest-environment jsdom
import { all, clear, field, focused, leave, one, openFolder } from '../mounted.ts';
import { press, settled, show, type } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { TableBlock } from '../../../renderer/editors/chapter.ts';
import { completionBlocks } from '../../../renderer/editors/chapters/completion.ts';
import EntryTable from '../../../renderer/editors/EntryTable.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

const table = completionBlocks().find((one) => one.kind === 'table') as TableBlock;
let folder: Folder;
const stored = () => folder.desk.record.annulus;
const input = () => field('annulus[0].fill');
/** A word of the list as it is spoken: what is hidden from a screen reader is left out. */
const spoken = (option: Element) =>
  [...option.querySelectorAll('span:not([aria-hidden])')].map((part) => part.textContent).join('');
const options = () => all('[role=option]').map(spoken);
const active = () => all('[role=option][aria-selected=true]').map(spoken);

beforeEach(async () => {
  folder = openFolder({ annulus: [{ from: 0, to: 5, fill: 'claySeal' }] });
  show(EntryTable, { folder, table, list: 'annulus' });
  input().focus();
  await settled();
});
afterEach(async () => {
  await clear();
  folder.saving.stop();
});

describe('a field of words', () => {
  it('is a combobox that names its list and the word that is marked', async () => {
    expect(input().getAttribute('role')).toBe('combobox');
    expect(input().getAttribute('aria-expanded')).toBe('false');
    expect(input().getAttribute('aria-controls')).toBeNull();
    await type('annulus[0].fill', 'ce');
    const list = one<HTMLElement>(`[id="${input().getAttribute('aria-controls')}"]`);
    expect(list.getAttribute('role')).toBe('listbox');
    expect(list.getAttribute('aria-label')).toBe('Words for Fill');
    const marked = one(`[id="${input().getAttribute('aria-activedescendant')}"]`);
    expect(marked.getAttribute('aria-selected')).toBe('true');
    expect(spoken(marked)).toBe('cement grout, code ce');
  });

  it('takes the marked word with Enter and goes on', async () => {
    await type('annulus[0].fill', 'gr');
    expect(options()[0]).toBe('gravel pack, code g');
    expect(await press('Enter')).toBe(false);
    expect(stored()?.[0]?.fill).toBe('gravelPack');
    expect(focused()).toBe('annulus[0].sacks');
    expect(all('[role=listbox]')).toEqual([]);
  });

  it('takes it with Tab, which is left to go on by itself', async () => {
    await type('annulus[0].fill', 'back');
    expect(await press('Tab')).toBe(true);
    expect(stored()?.[0]?.fill).toBe('backfill');
  });

  it('takes a code at once, and shows it beside its word', async () => {
    await type('annulus[0].fill', 'b');
    expect(active()).toEqual(['bentonite seal, code b']);
    expect(stored()?.[0]?.fill).toBe('bentonite');
  });

  it('shows all its words with an arrow, the one that stands there marked', async () => {
    await press('ArrowDown');
    expect(options()).toHaveLength(9);
    expect(active()).toEqual(['clay seal, code c']);
    await press('ArrowDown');
    expect(active()).toEqual(['bentonite seal, code b']);
    await press('ArrowUp');
    await press('ArrowUp');
    await press('Enter');
    expect(stored()?.[0]?.fill).toBe('formationStabiliser');
  });

  it('goes round from the last word to the first', async () => {
    await type('annulus[0].fill', 'c');
    const first = active();
    await press('ArrowUp');
    expect(active()).not.toEqual(first);
    await press('ArrowDown');
    expect(active()).toEqual(first);
  });

  it('closes with Escape and keeps the hand and the text', async () => {
    await type('annulus[0].fill', 'gr');
    await press('Escape');
    expect(all('[role=listbox]')).toEqual([]);
    expect(focused()).toBe('annulus[0].fill');
    expect(input().value).toBe('gr');
  });

  it('takes no word for one that was emptied', async () => {
    await type('annulus[0].fill', '');
    expect(active()).toEqual([]);
    await press('Enter');
    expect(input().value).toBe('');
    expect(stored()?.[0]?.fill).toBe('claySeal');
  });

  it('takes no word with Shift and Enter, which leads back', async () => {
    await type('annulus[0].fill', 'zzz');
    expect(all('[role=listbox]')).toEqual([]);
    await press('Enter', { shiftKey: true });
    expect(focused()).toBe('annulus[0].to');
    expect(input().value).toBe('zzz');
  });

  it('takes the word that the mouse chose, and the hand stays', async () => {
    input().click();
    await settled();
    const [, , clay] = all('[role=option]');
    const event = new MouseEvent('pointerdown', { bubbles: true, cancelable: true });
    expect(all('[role=option]')[0]?.dispatchEvent(event)).toBe(false);
    await settled();
    expect(clay?.isConnected).toBe(false);
    expect(stored()?.[0]?.fill).toBe('gravelPack');
    expect(focused()).toBe('annulus[0].fill');
  });

  it('closes when the hand leaves, and shows the word that was meant', async () => {
    await type('annulus[0].fill', 'conc');
    await leave();
    expect(all('[role=listbox]')).toEqual([]);
    expect(input().value).toBe('concrete');
  });

  it('opens with an arrow that holds nothing else: rows are marked and moved as anywhere', async () => {
    await press('ArrowDown', { shiftKey: true });
    expect(all('[role=listbox]')).toEqual([]);
    expect(all('tr.marked')).toHaveLength(2);
  });
});
