// @vitest-environment jsdom
import { all, button, clear, click, field, focused, leave, one, openFolder } from '../mounted.ts';
import { paste, press, said, settled, show, texts, type } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { TableBlock } from '../../../renderer/editors/chapter.ts';
import { groundBlocks } from '../../../renderer/editors/chapters/ground.ts';
import EntryTable from '../../../renderer/editors/EntryTable.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

const log = [
  { from: 0, to: 2, material: 'topsoil' },
  { from: 2, to: 5.5, material: 'clay' },
] as const;
const table = groundBlocks()[0] as TableBlock;
let folder: Folder;

async function lay(rows: readonly object[], readOnly = false) {
  await clear();
  folder = openFolder({ log: [...rows] as never }, readOnly);
  show(EntryTable, { folder, table, list: 'log' });
}
const stored = () => folder.desk.record.log;

beforeEach(() => lay(log));
afterEach(async () => {
  await clear();
  folder.saving.stop();
});

describe('the typing hand in a table', () => {
  it('goes on to the next cell with Enter, whose text is selected to be typed over', async () => {
    field('log[0].from').focus();
    await press('Enter');
    expect(focused()).toBe('log[0].to');
    expect([field('log[0].to').selectionStart, field('log[0].to').selectionEnd]).toEqual([0, 1]);
  });

  it('goes from the last cell into the next row, behind what that starts with', async () => {
    field('log[1].minutesPerMetre').focus();
    await press('Enter');
    expect(focused()).toBe('log[2].to');
  });

  it('begins at the first cell of a row that is there already', async () => {
    field('log[0].minutesPerMetre').focus();
    await press('Enter');
    expect(focused()).toBe('log[1].from');
  });

  it('meets nothing but cells on its way with Tab', () => {
    const stops = all('tbody :is(button, input, select, textarea)').filter(
      ({ tabIndex }) => tabIndex === 0,
    );
    expect(stops.slice(0, 6).map((stop) => stop.dataset['field'])).toEqual([
      'log[0].from',
      'log[0].to',
      'log[0].material',
      'log[0].colour',
      'log[0].minutesPerMetre',
      'log[1].from',
    ]);
    expect(stops).toHaveLength(15);
  });

  it('goes down a column with an arrow, but not out of a list of words', async () => {
    field('log[0].to').focus();
    await press('ArrowDown');
    expect(focused()).toBe('log[1].to');
    field('log[0].material').focus();
    expect(await press('ArrowDown')).toBe(true);
    expect(focused()).toBe('log[0].material');
  });

  it('opens the rest of the row with Ctrl and Enter, and is led back by Escape', async () => {
    field('log[1].to').focus();
    await press('Enter', { ctrlKey: true });
    expect(focused()).toBe('log[1].qualifiers');
    await press('Escape');
    expect(focused()).toBe('log[1].from');
  });
});

describe('what is typed into a table', () => {
  it('lets the next interval start where the last one ends, letter by letter', async () => {
    await type('log[1].to', '6');
    expect(field('log[2].from').value).toBe('6');
    await type('log[1].to', '6,2');
    expect(field('log[2].from').value).toBe('6.2');
  });

  it('is read with a decimal comma, left alone while typing, then shown with a point', async () => {
    await type('log[1].to', '6,20');
    expect(stored()?.[1]?.to).toBe(6.2);
    expect(field('log[1].to').value).toBe('6,20');
    await leave();
    expect(field('log[1].to').value).toBe('6.2');
  });

  it('becomes a row as soon as its foot is there, with another waiting below', async () => {
    await type('log[2].to', '9');
    expect(stored()?.[2]).toEqual({ from: 5.5, to: 9 });
    expect(field('log[3].from').value).toBe('9');
  });

  it('is kept where it cannot be read, and the record stays as it was', async () => {
    await type('log[1].to', '5x');
    expect(texts('.troubles')).toEqual([]);
    await leave();
    expect(field('log[1].to').value).toBe('5x');
    expect(stored()).toEqual(log);
    expect(field('log[1].to').getAttribute('aria-invalid')).toBe('true');
    const sentence = one(`[id="${field('log[1].to').getAttribute('aria-describedby')}"]`);
    expect(said(sentence)).toBe('To (m): “5x” is not a number. Write it like 12.5 or 12,5.');
  });

  it('has its trouble taken away when it is put right', async () => {
    await type('log[1].to', '5x');
    await type('log[1].to', '5');
    await leave();
    expect(texts('.troubles')).toEqual([]);
    expect(field('log[1].to').getAttribute('aria-invalid')).toBeNull();
  });

  it('cannot leave empty what a row must have', async () => {
    await type('log[1].to', '');
    await leave();
    expect(texts('.troubles')[0]).toContain('To (m): This cannot be left empty.');
    expect(stored()).toEqual(log);
  });

  it('gives way to undo, even under the hand', async () => {
    await type('log[1].to', '7');
    folder.undo();
    await settled();
    expect(field('log[1].to').value).toBe('5.5');
  });

  it('changes nothing in an archive that can only be read', async () => {
    await lay(log, true);
    expect(field('log[0].to').readOnly).toBe(true);
    await type('log[0].to', '1');
    expect(stored()).toEqual(log);
  });
});

describe('rows of a table', () => {
  it('come from a spreadsheet, over the rows that are there and beyond them', async () => {
    await type('log[1].to', '5');
    expect(await paste('6,5\tsand\r\n8\tgravel\r\n')).toBe(false);
    expect(stored()?.slice(1)).toEqual([
      { from: 2, to: 6.5, material: 'sand' },
      { from: 6.5, to: 8, material: 'gravel' },
    ]);
    expect(field('log[1].to').value).toBe('6.5');
  });

  it('are undone in one step where they were pasted', async () => {
    field('log[2].to').focus();
    await paste('7\tsand\r\n8\tgravel');
    folder.undo();
    expect(stored()).toEqual(log);
  });

  it('are not made of a single text: that is pasted as anywhere', async () => {
    field('log[1].to').focus();
    expect(await paste('6,5')).toBe(true);
    expect(stored()).toEqual(log);
  });

  it('are taken away by Ctrl and Delete, and the hand stays in its column', async () => {
    field('log[0].to').focus();
    await press('Delete', { ctrlKey: true });
    expect(stored()).toEqual([log[1]]);
    expect(focused()).toBe('log[0].to');
    expect(field('log[0].to').value).toBe('5.5');
  });

  it('are moved by Alt and an arrow together with the hand, and stay at the end', async () => {
    field('log[0].material').focus();
    await press('ArrowDown', { altKey: true });
    expect(stored()).toEqual([log[1], log[0]]);
    expect(focused()).toBe('log[1].material');
    await press('ArrowDown', { altKey: true });
    expect(stored()).toEqual([log[1], log[0]]);
  });

  it('are moved and deleted by buttons too, which say what cannot be', async () => {
    field('log[0].to').focus();
    await settled();
    expect(button('Move up').disabled).toBe(true);
    await click(button('Move down'));
    expect(stored()).toEqual([log[1], log[0]]);
    expect(folder.selected).toBe('log[1]');
    expect(button('Move down').disabled).toBe(true);
    await click(button('Delete row'));
    expect(stored()).toEqual([log[1]]);
  });

  it('come in order of depth on demand, which is offered where there are two', async () => {
    await lay([log[1], log[0]]);
    await click(button('Put in order of depth'));
    expect(stored()).toEqual(log);
    await lay([log[0]]);
    expect(() => button('Put in order of depth')).toThrow();
  });

  it('are chosen by the hand that is in them', async () => {
    field('log[1].colour').focus();
    await settled();
    expect(folder.selected).toBe('log[1]');
    expect(texts('tr[aria-current] .number')).toEqual(['2']);
  });

  it('bear the flag of the gravest finding on them', async () => {
    await lay([log[0], { from: 1.5, to: 5 }]);
    const flags = all('tr[data-row="1"] .flag').map((flag) => said(flag));
    const severities = folder.model.findings
      .filter(({ path }) => path.startsWith('log[1]'))
      .map(({ severity }) => severity);
    expect(severities).not.toEqual([]);
    expect(flags).toEqual([severities.includes('error') ? 'Wrong' : 'Look again']);
  });
});
