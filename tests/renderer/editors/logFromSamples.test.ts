// @vitest-environment jsdom
import {
  all,
  button,
  clear,
  click,
  focused,
  openFolder,
  press,
  settled,
  show,
  texts,
} from '../mounted.ts';
import { afterEach, describe, expect, it } from 'vitest';
import Editor from '../../../renderer/editors/Editor.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

const samples = [
  { from: 0, to: 1, material: 'clay' as const },
  { from: 1, to: 2, material: 'clay' as const },
];
const made = [{ from: 0, to: 2, material: 'clay', sampled: true }];
const own = [{ from: 0, to: 7, material: 'sand' as const }];
const deed = 'Make the log from the samples';
let folder: Folder;

function lay(record: object) {
  folder = openFolder(record);
  show(Editor, { folder });
}
afterEach(async () => {
  await clear();
  folder.saving.stop();
});

describe('making the log from the samples', () => {
  it('joins them into an empty log, where the hand goes', async () => {
    lay({ samples });
    await click(button(deed));
    expect(folder.desk.record.log).toEqual(made);
    expect(focused()).toBe('log[0].from');
    expect(texts('[role=status]').join()).toContain('The log has one interval now.');
  });

  it('asks before it replaces a log that is there; undo brings that back', async () => {
    lay({ samples, log: own });
    await click(button(deed));
    expect(folder.desk.record.log).toEqual(own);
    expect(texts('[role=alertdialog] span')).toEqual(['The log has one interval. Replace it?']);
    expect(document.activeElement).toBe(button('Replace'));
    await click(button('Replace'));
    expect(folder.desk.record.log).toEqual(made);
    folder.undo();
    expect(folder.desk.record.log).toEqual(own);
  });

  it('keeps the log where that is chosen, by Escape too', async () => {
    lay({ samples, log: own });
    await click(button(deed));
    await click(button('Keep the log'));
    expect(all('[role=alertdialog]')).toEqual([]);
    await click(button(deed));
    await press('Escape');
    await settled();
    expect(all('[role=alertdialog]')).toEqual([]);
    expect(folder.desk.record.log).toEqual(own);
  });

  it('is not offered without samples', () => {
    lay({ log: own });
    expect(() => button(deed)).toThrow();
  });
});
