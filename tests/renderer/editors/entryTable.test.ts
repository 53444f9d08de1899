// @vitest-environment jsdom
import { all, button, clear, click, field, focused, leave, one, openFolder } from '../mounted.ts';
import { copy, paste, press, said, settled, show, texts, type } from '../mounted.ts';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { TableBlock } from '../../../renderer/editors/chapter.ts';
import { groundBlocks } from '../../../renderer/editors/chapters/ground.ts';
import EntryTable from '../../../renderer/editors/EntryTable.svelte';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';

const log = [
  { from: 0, to: 2, material: 'topsoil' },
  { from: 2, to: 5.5, material: 'clay' },
] as const;
const table = groundBlocks().find((one) => 'list' in one && one.list === 'log') as TableBlock;
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
    expect(stops.slice(0, 7).map((stop) => stop.dataset['field'])).toEqual([
      'log[0].from',
      'log[0].to',
      'log[0].material',
      'log[0].qualifiers',
      'log[0].colour',
      'log[0].minutesPerMetre',
      'log[1].from',
    ]);
    expect(stops).toHaveLength(18);
  });

  it('goes down a column with an arrow, but opens a list of words with it', async () => {
    field('log[0].to').focus();
    await press('ArrowDown');
    expect(focused()).toBe('log[1].to');
    field('log[0].material').focus();
    await press('ArrowDown');
    expect(focused()).toBe('log[0].material');
    expect(field('log[0].material').getAttribute('aria-expanded')).toBe('true');
  });

  it('opens the rest of the row with Ctrl and Enter, and is led back by Escape', async () => {
    field('log[1].to').focus();
    await press('Enter', { ctrlKey: true });
    expect(focused()).toBe('log[1].grain');
    await press('Escape');
    expect(focused()).toBe('log[1].to');
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
    expect(said(sentence)).toMatch(/^To \(m\): “5x” is not a number\. .* “x” is no unit/);
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

  it('bear the flag of the gravest finding on them, and say it at the cell', async () => {
    await lay([log[0], { from: 1.5, to: 5 }]);
    const found = folder.findings.filter(({ path }) => path.startsWith('log[1]'));
    expect(found).not.toEqual([]);
    const worst = found.some(({ severity }) => severity === 'error') ? 'error' : 'warning';
    const flag = one<HTMLElement>('tr[data-row="1"] .flag');
    expect(flag.classList.contains(worst)).toBe(true);
    expect(flag.title).toMatch(worst === 'error' ? /^Wrong: / : /^Look again: /);
    const ids = all('tr[data-row="1"] [data-field]').flatMap(
      (each) => each.getAttribute('aria-describedby')?.split(' ') ?? [],
    );
    const sentences = ids.map((id) => said(one(`[id="${id}"]`)));
    expect(sentences.join('\n')).toContain(flag.title.split('\n')[0]);
  });

  it('say what was found of the row that the hand is in, below the table', async () => {
    await lay([log[0], { from: 1.5, to: 5 }]);
    field('log[1].from').focus();
    await settled();
    const title = one<HTMLElement>('tr[data-row="1"] .flag').title.split('\n');
    expect(texts('.rest .finding')).toEqual(title);
    field('log[0].from').focus();
    await settled();
    expect(texts('.rest .finding').join()).not.toBe(title.join());
  });
});

describe('rows that are marked together', () => {
  const three = [...log, { from: 5.5, to: 9, material: 'sand', colour: 'grey' }];
  const marked = () => all('tr.marked').map((row) => row.dataset['row']);
  const status = () => texts('[role=status]').join('');

  beforeEach(() => lay(three));

  it('are those that Shift and arrows went over, and are said', async () => {
    field('log[0].to').focus();
    await press('ArrowDown', { shiftKey: true });
    await press('ArrowDown', { shiftKey: true });
    expect(marked()).toEqual(['0', '1', '2']);
    expect(all('tr.marked [aria-pressed=true]')).toHaveLength(3);
    expect(texts('tr.marked .number button')[0]).toBe('✓ 1');
    expect(status()).toContain('3 rows selected');
    expect(focused()).toBe('log[2].to');
    await press('ArrowUp', { shiftKey: true });
    expect(marked()).toEqual(['0', '1']);
  });

  it('are marked no longer once the hand goes on, or with Escape', async () => {
    field('log[0].to').focus();
    await press('ArrowDown', { shiftKey: true });
    await press('ArrowDown');
    expect(marked()).toEqual([]);
    await press('ArrowUp', { shiftKey: true });
    await press('Escape');
    expect(marked()).toEqual([]);
    expect(focused()).toBe('log[1].to');
  });

  it('are marked with Shift and the mouse', async () => {
    field('log[0].to').focus();
    await settled();
    const down = (held: object) =>
      field('log[2].colour').dispatchEvent(
        new MouseEvent('pointerdown', { bubbles: true, cancelable: true, ...held }),
      );
    down({ shiftKey: true });
    await settled();
    expect(marked()).toEqual(['0', '1', '2']);
    down({});
    await settled();
    expect(marked()).toEqual([]);
  });

  it('are deleted, duplicated and moved together', async () => {
    field('log[0].to').focus();
    await press('ArrowDown', { shiftKey: true });
    await press('ArrowDown', { altKey: true });
    expect(stored()).toEqual([three[2], three[0], three[1]]);
    expect(marked()).toEqual(['1', '2']);
    await press('D', { ctrlKey: true, shiftKey: true });
    expect(stored()).toHaveLength(5);
    expect(marked()).toEqual(['3', '4']);
    await press('Delete', { ctrlKey: true });
    expect(stored()).toEqual([three[2], three[0], three[1]]);
    folder.undo();
    folder.undo();
    folder.undo();
    expect(stored()).toEqual(three);
  });

  it('are filled down from the first of them', async () => {
    field('log[0].material').focus();
    await press('ArrowDown', { shiftKey: true });
    expect(await press('d', { ctrlKey: true })).toBe(false);
    expect(stored()?.map(({ material }) => material)).toEqual(['topsoil', 'topsoil', 'sand']);
    expect(field('log[1].material').value).toBe('topsoil');
  });

  it('go to the clipboard as a spreadsheet has them, and come back as rows', async () => {
    field('log[1].to').focus();
    await press('ArrowDown', { shiftKey: true });
    const text = await copy();
    expect(text).toBe('2\t5.5\tclay\t\t\t\n5.5\t9\tsand\t\tgrey\t');
    await press('Escape');
    field('log[0].from').focus();
    expect(await paste(text)).toBe(false);
    expect(stored()).toEqual([three[1], three[2], ...three]);
  });

  it('are cut out, and laid down elsewhere with what no column shows', async () => {
    const whole = { from: 9, to: 10, material: 'gravel', remarks: 'loose' };
    await lay([...three, whole]);
    field('log[3].to').focus();
    field('log[3].to').setSelectionRange(0, 0);
    const text = await copy('cut');
    expect(stored()).toEqual(three);
    field('log[0].to').focus();
    await paste(text);
    expect(stored()?.[0]).toEqual(whole);
  });

  it('leave the clipboard to a text that is marked in a cell', async () => {
    field('log[1].to').focus();
    field('log[1].to').setSelectionRange(0, 1);
    expect(await copy()).toBe('');
  });

  it('are joined into one, with the words of the others in the remarks', async () => {
    field('log[0].to').focus();
    await press('ArrowDown', { shiftKey: true });
    await press('ArrowDown', { shiftKey: true });
    await press('j', { altKey: true });
    expect(stored()).toEqual([
      { from: 0, to: 9, material: 'topsoil', colour: 'grey', remarks: 'CLAY; SAND, grey' },
    ]);
  });
});

describe('an interval that is split', () => {
  const depth = () => one('.split input');

  beforeEach(async () => {
    field('log[1].material').focus();
    await press('s', { altKey: true });
  });

  it('is split in its middle with Enter, and the hand is in the lower part', async () => {
    expect(document.activeElement).toBe(depth());
    expect(depth().value).toBe('3.75');
    await press('Enter');
    expect(stored()?.slice(1)).toEqual([
      { from: 2, to: 3.75, material: 'clay' },
      { from: 3.75, to: 5.5, material: 'clay' },
    ]);
    expect(focused()).toBe('log[2].material');
  });

  it('is split at a depth as it is typed, with a unit too', async () => {
    depth().value = '10 ft';
    depth().dispatchEvent(new Event('input', { bubbles: true }));
    await press('Enter');
    expect(stored()?.[1]?.to).toBe(3.05);
  });

  it('says so where the depth does not lie in it', async () => {
    depth().value = '6';
    depth().dispatchEvent(new Event('input', { bubbles: true }));
    await press('Enter');
    expect(texts('.split .said')).toEqual([
      '“6” does not lie inside the interval. Write a depth between 2 and 5.5.',
    ]);
    expect(stored()).toEqual(log);
  });

  it('is left whole with Escape', async () => {
    await press('Escape');
    expect(all('.split')).toEqual([]);
    expect(focused()).toBe('log[1].material');
  });
});

describe('a row that is inserted', () => {
  beforeEach(async () => {
    field('log[1].material').focus();
    await press('Insert');
  });

  it('waits before the row that the hand was in', async () => {
    expect(focused()).toBe('log[2].to');
    expect(all('tbody tr[data-row]').map((row) => row.className.includes('waiting'))).toEqual([
      false,
      true,
      false,
    ]);
    expect(field('log[2].from').value).toBe('2');
    expect(stored()).toEqual(log);
  });

  it('becomes a row there with the hand in it, and what is typed on is the same step', async () => {
    await type('log[2].to', '2');
    await type('log[1].to', '2,5');
    expect(stored()?.map(({ to }) => to)).toEqual([2, 2.5, 5.5]);
    expect(focused()).toBe('log[1].to');
    expect(folder.selected).toBe('log[1]');
    expect(field('log[3].from').value).toBe('5.5');
    folder.undo();
    expect(stored()).toEqual(log);
  });

  it('waits at the end again after Escape', async () => {
    await press('Escape');
    expect(field('log[2].from').value).toBe('5.5');
  });
});
