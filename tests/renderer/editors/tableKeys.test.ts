import { describe, expect, it } from 'vitest';
import { blockOf, deedKeys, nameOf, wishOf } from '../../../renderer/editors/tableKeys.ts';

type Held = Partial<Record<'shiftKey' | 'altKey' | 'ctrlKey' | 'metaKey', true>>;

const key = (name: string, held: Held = {}) => ({
  key: name,
  shiftKey: false,
  altKey: false,
  ctrlKey: false,
  metaKey: false,
  ...held,
});
/** The second of three rows; Enter passes over the column before the last. */
const at = { row: 1, column: 1, rows: 3, columns: 4, route: [0, 1, 3], blank: false };

describe('keys in a table', () => {
  it('Enter goes on to the next cell that it stops at, and from the last one to the next row', () => {
    expect(wishOf(key('Enter'), at)).toEqual({ kind: 'go', row: 1, column: 3 });
    expect(wishOf(key('Enter'), { ...at, column: 2 })).toEqual({ kind: 'go', row: 1, column: 3 });
    expect(wishOf(key('Enter'), { ...at, column: 3 })).toEqual({ kind: 'go', row: 2, column: 0 });
  });

  it('Shift with Enter goes back the same way', () => {
    const shift = key('Enter', { shiftKey: true });
    expect(wishOf(shift, { ...at, column: 3 })).toEqual({ kind: 'go', row: 1, column: 1 });
    expect(wishOf(shift, { ...at, column: 0 })).toEqual({ kind: 'go', row: 0, column: 3 });
    expect(wishOf(shift, { ...at, row: 0, column: 0 })).toBeUndefined();
  });

  it('Enter is left to lead out of the table on a row with nothing in it, and at its end', () => {
    expect(wishOf(key('Enter'), { ...at, row: 2, blank: true })).toBeUndefined();
    expect(wishOf(key('Enter'), { ...at, row: 2, column: 3 })).toBeUndefined();
  });

  it('arrows go up and down, with Shift they mark rows, and stay at the ends', () => {
    expect(wishOf(key('ArrowDown'), at)).toEqual({ kind: 'go', row: 2, column: 1 });
    expect(wishOf(key('ArrowUp', { shiftKey: true }), at)).toEqual({
      kind: 'mark',
      row: 0,
      column: 1,
    });
    expect(wishOf(key('ArrowUp'), { ...at, row: 0 })).toBeUndefined();
    expect(wishOf(key('ArrowDown', { shiftKey: true }), { ...at, row: 2 })).toBeUndefined();
  });

  it.each([
    ['more', key('Enter', { ctrlKey: true })],
    ['insert', key('Insert')],
    ['duplicate', key('D', { ctrlKey: true, shiftKey: true })],
    ['split', key('s', { altKey: true })],
    ['join', key('j', { altKey: true })],
    ['fillDown', key('d', { ctrlKey: true })],
    ['fillDown', key('d', { metaKey: true })],
    ['up', key('ArrowUp', { altKey: true })],
    ['down', key('ArrowDown', { altKey: true })],
    ['remove', key('Delete', { ctrlKey: true })],
  ])('the deed %s has its key', (kind, pressed) => {
    expect(wishOf(pressed, at)).toEqual({ kind });
  });

  it('leaves to a text and to the browser what is theirs', () => {
    const theirs = [
      key('Delete'),
      key('s'),
      key('d'),
      key('ArrowLeft', { shiftKey: true }),
      key('c', { ctrlKey: true }),
      key('v', { ctrlKey: true }),
      key('Insert', { ctrlKey: true }),
      key('Insert', { shiftKey: true }),
      key('Tab'),
      // AltGr writes letters on many boards and reports both.
      key('s', { ctrlKey: true, altKey: true }),
    ];
    expect(theirs.filter((pressed) => wishOf(pressed, at))).toEqual([]);
  });

  it('has no key for two deeds, and none that browsers keep for themselves', () => {
    const keys = Object.values(deedKeys);
    expect(new Set(keys).size).toBe(keys.length);
    // Closing, opening and turning tabs never reach a page: from memory, Chromium and Firefox.
    for (const kept of ['Ctrl+W', 'Ctrl+N', 'Ctrl+T', 'Ctrl+PageDown', 'Ctrl+Tab', 'Alt+D'])
      expect(keys).not.toContain(kept);
  });

  it('names a key by what is held, always in one order', () => {
    expect(nameOf(key('d', { shiftKey: true, ctrlKey: true }))).toBe('Ctrl+Shift+D');
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
