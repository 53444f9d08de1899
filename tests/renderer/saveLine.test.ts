// @vitest-environment jsdom
import {
  all,
  button,
  clear,
  click,
  one,
  openFolder,
  said,
  settled,
  show,
  texts,
} from './mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import SaveLine from '../../renderer/SaveLine.svelte';
import type { Folder } from '../../renderer/state/folder.svelte.ts';
import type { SaveState } from '../../renderer/state/saver.ts';

const at = new Date(2025, 2, 9, 14, 5).toISOString();

let folder: Folder;
let left: boolean[];

async function showState(state: SaveState, unrevised = false) {
  folder.saving.state = state;
  folder.saving.unrevised = unrevised;
  await settled();
}

const sentence = () => said(one('[data-saving]'));

beforeEach(() => {
  folder = openFolder({ bore: { depthReached: 30 } });
  left = [];
  const place = { leave: async (insist: boolean) => void left.push(insist) };
  show(SaveLine, { place, folder });
});
afterEach(clear);

it('the sheet names a revision only while what lies open is that revision', async () => {
  await showState({ kind: 'kept', at, revised: true });
  expect(folder.saving.shownRevision).toBe(1);
  await showState({ kind: 'waiting' });
  expect(folder.saving.shownRevision).toBeUndefined();
  await showState({ kind: 'kept', at, revised: false }, true);
  expect(folder.saving.shownRevision).toBeUndefined();
});

describe('the line on what is on disk', () => {
  it('names the revision only while nothing was typed after it', async () => {
    await showState({ kind: 'kept', at, revised: true });
    expect(sentence()).toBe('Revision 1 saved at 14:05');
    await showState({ kind: 'kept', at, revised: false }, true);
    expect(sentence()).toBe('On disk at 14:05, later than revision 1');
  });

  it('does not call the record later where only a text was typed that is no part of it', async () => {
    await showState({ kind: 'kept', at, revised: false });
    expect(sentence()).toBe('On disk at 14:05');
  });

  it('says so as soon as something is typed, until it is there', async () => {
    folder.edit((desk) => ({ ...desk, typed: { 'bore.depthReached': '3o' } }));
    await settled();
    expect(sentence()).toBe('Not on disk yet');
    expect(texts('.unread')[0]).toMatch(/^One entry cannot be read yet\. It is kept/);
    await showState({ kind: 'saving' });
    expect(sentence()).toBe('Writing to disk …');
    folder.saving.stop();
  });

  it('takes a reason while there is something to make a revision of, and saves with Enter', async () => {
    await showState({ kind: 'kept', at, revised: true });
    expect(all('.reason')).toEqual([]);
    await showState({ kind: 'kept', at, revised: false }, true);
    const field = one('.reason');
    field.value = 'Sounded again';
    field.dispatchEvent(new Event('input', { bubbles: true }));
    expect(folder.saving.reason).toBe('Sounded again');
    let revised = 0;
    folder.saving.revise = async () => void (revised += 1);
    field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
    expect(revised).toBe(1);
  });

  it('speaks only when a person has to know', async () => {
    await showState({ kind: 'kept', at, revised: false }, true);
    expect(texts('[aria-live]')).toEqual(['']);
    expect(all('button')).toEqual([]);
    await showState({ kind: 'refused', code: 'diskFull', sentence: 'The disk is full.' });
    expect(texts('[aria-live]')).toEqual(['Not on disk: The disk is full.']);
  });

  it('offers to try again and to leave where it was refused', async () => {
    await showState({ kind: 'refused', code: 'diskFull', sentence: 'The disk is full.' });
    let tried = 0;
    folder.saving.flush = async () => void (tried += 1);
    await click(button('Try again'));
    await click(button('Leave without it'));
    expect([tried, left]).toEqual([1, [true]]);
  });

  it('asks whose work stands where two windows changed the same place', async () => {
    await showState({ kind: 'parted' });
    expect(texts('[aria-live]')[0]).toMatch(/^Another window changed the same place\./);
    const chosen: string[] = [];
    folder.saving.choose = async (choice) => void chosen.push(choice);
    await click(button('Take the other window’s'));
    await click(button('Keep mine'));
    expect(chosen).toEqual(['theirs', 'mine']);
  });
});
