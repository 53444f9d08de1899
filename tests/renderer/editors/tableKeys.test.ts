import { describe, expect, it } from 'vitest';
import { blockOf, wishOf } from '../../../renderer/editors/tableKeys.ts';

const key = (
  name: string,
  held: Partial<Record<'shiftKey' | 'altKey' | 'ctrlKey', true>> = {},
) => ({
  key: name,
  shiftKey: false,
  altKey: false,
  ctrlKey: false,
  ...held,
});
const at = { row: 1, column: 2, rows: 3, columns: 4 };

describe('keys in a table', () => {
  it('Enter goes on to the next cell, and from the last one to the next row', () => {
    expect(wishOf(key('Enter'), at, false)).toEqual({ kind: 'go', row: 1, column: 3 });
    expect(wishOf(key('Enter'), { ...at, column: 3 }, false)).toEqual({
      kind: 'go',
      row: 2,
      column: 0,
    });
  });

  it('Shift with Enter goes back', () => {
    expect(wishOf(key('Enter', { shiftKey: true }), { ...at, column: 0 }, false)).toEqual({
      kind: 'go',
      row: 0,
      column: 3,
    });
  });

  it('Enter stays at the end of the table', () => {
    expect(wishOf(key('Enter'), { ...at, row: 2, column: 3 }, false)).toBeUndefined();
  });

  it('arrows go up and down, but not where the control needs them itself', () => {
    expect(wishOf(key('ArrowDown'), at, false)).toEqual({ kind: 'go', row: 2, column: 2 });
    expect(wishOf(key('ArrowDown'), at, true)).toBeUndefined();
    expect(wishOf(key('ArrowUp'), { ...at, row: 0 }, false)).toBeUndefined();
  });

  it('Alt with an arrow moves the row, Ctrl with Delete takes it away', () => {
    expect(wishOf(key('ArrowUp', { altKey: true }), at, true)).toEqual({ kind: 'move', by: -1 });
    expect(wishOf(key('Delete', { ctrlKey: true }), at, false)).toEqual({ kind: 'remove' });
    expect(wishOf(key('Delete'), at, false)).toBeUndefined();
  });

  it('Ctrl with Enter goes to the rest of the row', () => {
    expect(wishOf(key('Enter', { ctrlKey: true }), at, false)).toEqual({ kind: 'more' });
  });
});

describe('what was copied from a spreadsheet', () => {
  it('is a block of lines and cells', () => {
    expect(blockOf('0\t2\r\n2\t5\r\n')).toEqual([
      ['0', '2'],
      ['2', '5'],
    ]);
  });

  it('is no block where a single text was copied', () => {
    expect(blockOf('clay')).toBeUndefined();
    expect(blockOf('clay\n')).toBeUndefined();
  });
});
