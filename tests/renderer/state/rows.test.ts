import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../../../core/record/freeze.ts';
import type { LogInterval } from '../../../core/record/log.ts';
import { rowsOf, type TableBlock } from '../../../renderer/editors/chapter.ts';
import { groundBlocks } from '../../../renderer/editors/chapters/ground.ts';
import type { Desk } from '../../../renderer/state/desk.ts';
import {
  deleteRow,
  enterInRow,
  moveRow,
  pasteIntoRows,
  shownInRow,
  sortRows,
} from '../../../renderer/state/rows.ts';

const table = groundBlocks()[0] as TableBlock;
const rows = rowsOf(table, 'log');
const [from, to, material] = rows.fields as [
  (typeof rows.fields)[0],
  (typeof rows.fields)[0],
  (typeof rows.fields)[0],
];

function deskOf(log: readonly LogInterval[]): Desk {
  return deepFreeze({ record: { schemaVersion: 1, log: [...log] }, typed: {} });
}

const two = deskOf([
  { from: 0, to: 2, material: 'topsoil' },
  { from: 2, to: 5.5, material: 'clay' },
]);

describe('the row that waits after the last', () => {
  it('starts where the last one ended', () => {
    expect(shownInRow(two, rows, 2, from)).toBe('5.5');
  });

  it('starts at the ground in an empty log', () => {
    expect(shownInRow(deskOf([]), rows, 0, from)).toBe('0');
  });

  it('becomes a row as soon as what it must have is there', () => {
    const next = enterInRow(two, rows, 2, to, '7');
    expect(next.record.log?.[2]).toEqual({ from: 5.5, to: 7 });
    expect(next.typed).toEqual({});
  });

  it('waits with what was typed while something is lacking', () => {
    const next = enterInRow(two, rows, 2, material, 'sand');
    expect(next.record).toBe(two.record);
    expect(shownInRow(next, rows, 2, material)).toBe('sand');
    expect(enterInRow(next, rows, 2, to, '7').record.log?.[2]).toEqual({
      from: 5.5,
      to: 7,
      material: 'sand',
    });
  });

  it('does not begin by itself when its start was wiped away', () => {
    const next = enterInRow(enterInRow(two, rows, 2, from, ''), rows, 2, to, '7');
    expect(next.record.log).toHaveLength(2);
    expect(shownInRow(next, rows, 2, from)).toBe('');
  });

  it('keeps a text that cannot be read when it becomes a row', () => {
    const next = enterInRow(enterInRow(two, rows, 2, material, 'zzz'), rows, 2, to, '7');
    expect(next.record.log?.[2]).toEqual({ from: 5.5, to: 7 });
    expect(shownInRow(next, rows, 2, material)).toBe('zzz');
  });
});

describe('rows that change their places', () => {
  const odd = enterInRow(two, rows, 1, to, '5x');

  it('are deleted with what was typed in them', () => {
    const next = deleteRow(odd, 'log', 1);
    expect(next.record.log).toHaveLength(1);
    expect(next.typed).toEqual({});
  });

  it('take along what was typed when one above is deleted', () => {
    expect(deleteRow(odd, 'log', 0).typed).toEqual({ 'log[0].to': '5x' });
  });

  it('take along what was typed when they are moved', () => {
    const next = moveRow(odd, 'log', 1, -1);
    expect(next.record.log?.[0]?.material).toBe('clay');
    expect(next.typed).toEqual({ 'log[0].to': '5x' });
  });

  it('stay at the ends of the list', () => {
    expect(moveRow(two, 'log', 0, -1)).toBe(two);
    expect(moveRow(two, 'log', 1, 1)).toBe(two);
  });

  it('come in order of depth, and those alike keep their order', () => {
    const desk = deskOf([
      { from: 4, to: 5 },
      { from: 0, to: 2, colour: 'red' },
      { from: 0, to: 2, colour: 'grey' },
    ]);
    const { log } = sortRows(desk, 'log', 'from').record;
    expect(log?.map(({ from: top, colour }) => colour ?? top)).toEqual(['red', 'grey', 4]);
  });

  it('are the same desk when they were in order already', () => {
    expect(sortRows(two, 'log', 'from')).toBe(two);
  });
});

describe('pasting from a spreadsheet', () => {
  it('fills cells to the right and rows down, and makes new rows at the end', () => {
    const next = pasteIntoRows(two, rows, 1, 1, [
      ['6,5', 'sand', 'grey'],
      ['8', 'gravel', ''],
    ]);
    // The first line gives row 2 its foot; the second, from the foot on, becomes row 3.
    expect(next.record.log?.slice(1)).toEqual([
      { from: 2, to: 6.5, material: 'sand', colour: 'grey' },
      { from: 6.5, to: 8, material: 'gravel' },
    ]);
  });

  it('keeps every cell that cannot be read, in its place', () => {
    const next = pasteIntoRows(two, rows, 0, 1, [['two', 'topsoil']]);
    expect(next.typed).toEqual({ 'log[0].to': 'two' });
  });
});
