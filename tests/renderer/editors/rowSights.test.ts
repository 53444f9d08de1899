// @vitest-environment jsdom
import { clear, field, leave, openFolder, settled, show, type } from '../mounted.ts';
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { TableBlock } from '../../../renderer/editors/chapter.ts';
import { groundBlocks } from '../../../renderer/editors/chapters/ground.ts';
import EntryTable from '../../../renderer/editors/EntryTable.svelte';
import type { EntryField } from '../../../renderer/editors/fields/entryField.ts';
import { enter } from '../../../renderer/state/desk.ts';
import type { Folder } from '../../../renderer/state/folder.svelte.ts';
import { deleteRow } from '../../../renderer/state/rows.ts';

const block = groundBlocks().find((one) => 'list' in one && one.list === 'log') as TableBlock;
let folder: Folder;
/** Values whose texts were asked for since the list was emptied. */
let asked: unknown[] = [];

const listening = (field: EntryField): EntryField => ({
  ...field,
  write: (value) => {
    asked.push(value);
    return field.write(value);
  },
});
const colour = block.columns.find(({ name }) => name === 'colour')!;

beforeEach(() => {
  folder = openFolder({
    log: [
      { from: 0, to: 2, material: 'topsoil', colour: 'black' },
      { from: 2, to: 5.5, material: 'clay', colour: 'grey' },
      { from: 5.5, to: 7, material: 'sand', colour: 'red' },
    ],
  });
  const columns = block.columns.map(listening);
  show(EntryTable, { folder, table: { ...block, columns }, list: 'log' });
  asked = [];
});
afterEach(async () => {
  await clear();
  folder.saving.stop();
});

it('a letter in one row has no other row look up its texts', async () => {
  await type('log[1].colour', 'brown');
  expect(asked).toContain('clay');
  expect(asked).not.toContain('black');
  expect(asked).not.toContain('red');
});

it('neither has a text that cannot be read', async () => {
  await type('log[1].to', 'deep');
  asked = [];
  await type('log[1].to', 'deeper');
  expect(asked).not.toContain('black');
});

it('rows show what was changed elsewhere than in the table', async () => {
  folder.edit((desk) => enter(desk, 'log[2]', colour, 'white'));
  await settled();
  expect(field('log[2].colour').value).toBe('white');
  folder.lift((desk) => enter(desk, 'log[0]', colour, 'blue'));
  await settled();
  expect(field('log[0].colour').value).toBe('blue');
  folder.lift();
  await settled();
  expect(field('log[0].colour').value).toBe('black');
});

it('rows follow one that is gone, and come again with undo', async () => {
  folder.edit((desk) => deleteRow(desk, 'log', 0));
  await settled();
  expect(field('log[0].colour').value).toBe('grey');
  expect(field('log[2].from').value).toBe('7');
  folder.undo();
  await settled();
  expect(field('log[2].colour').value).toBe('red');
  expect(field('log[3].from').value).toBe('7');
});

it('a row is told of what was found on it once the hand brought it about, and of its end', async () => {
  const found = () => field('log[1].from').closest('td')?.className;
  await type('log[1].from', '1');
  await leave();
  expect(found()).toContain('found');
  await type('log[1].from', '2');
  await leave();
  expect(found()).not.toContain('found');
});
