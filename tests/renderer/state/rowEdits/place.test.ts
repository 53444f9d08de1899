import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../../../../core/record/freeze.ts';
import type { Desk } from '../../../../renderer/state/desk.ts';
import {
  deleteRows,
  duplicateRows,
  layRows,
  moveRows,
  takeRows,
} from '../../../../renderer/state/rowEdits/place.ts';
import { rangeOf, sizeOf, within } from '../../../../renderer/state/rowEdits/range.ts';

/** Four rows told apart by colour; the third bears a text that could not be read. */
const four: Desk = deepFreeze({
  record: {
    schemaVersion: 1,
    log: ['a', 'b', 'c', 'd'].map((colour, at) => ({ from: at, to: at + 1, colour })),
  },
  typed: { 'log[2].to': '3x', 'log[4].colour': 'grey', 'strikes[2].depth': 'two' },
});
const colours = (desk: Desk) => desk.record.log?.map(({ colour }) => colour).join('');

describe('rows next to each other', () => {
  it('are a range whichever way they were marked', () => {
    expect(rangeOf(3, 1)).toEqual({ first: 1, last: 3 });
    expect(sizeOf(rangeOf(3, 1))).toBe(3);
  });

  it('are counted without the row that waits', () => {
    expect(within({ first: 2, last: 4 }, 4)).toEqual({ first: 2, last: 3 });
    expect(within({ first: 4, last: 4 }, 4)).toBeUndefined();
  });
});

describe('several rows', () => {
  it('are deleted with what was typed in them, and those below come up with theirs', () => {
    const next = deleteRows(four, 'log', { first: 0, last: 1 });
    expect(colours(next)).toBe('cd');
    expect(next.typed).toEqual({
      'log[0].to': '3x',
      'log[2].colour': 'grey',
      'strikes[2].depth': 'two',
    });
  });

  it('that end with the waiting row empty it too', () => {
    const next = deleteRows(four, 'log', { first: 3, last: 4 });
    expect(colours(next)).toBe('abc');
    expect(next.typed).not.toHaveProperty(['log[3].colour']);
  });

  it('stand once more below themselves, with what was typed in them', () => {
    const next = duplicateRows(four, 'log', { first: 1, last: 2 });
    expect(colours(next)).toBe('abcbcd');
    expect(next.typed).toEqual({
      'log[2].to': '3x',
      'log[4].to': '3x',
      'log[6].colour': 'grey',
      'strikes[2].depth': 'two',
    });
  });

  it('are not made of the row that waits', () => {
    expect(duplicateRows(four, 'log', { first: 4, last: 4 })).toBe(four);
  });

  it('move together with what was typed in them', () => {
    const up = moveRows(four, 'log', { first: 1, last: 2 }, -1);
    expect(colours(up)).toBe('bcad');
    expect(up.typed['log[1].to']).toBe('3x');
    const down = moveRows(four, 'log', { first: 1, last: 2 }, 1);
    expect(colours(down)).toBe('adbc');
    expect(down.typed['log[3].to']).toBe('3x');
  });

  it('stay at the ends of the list', () => {
    expect(moveRows(four, 'log', { first: 0, last: 1 }, -1)).toBe(four);
    expect(moveRows(four, 'log', { first: 2, last: 3 }, 1)).toBe(four);
    expect(moveRows(four, 'log', { first: 4, last: 4 }, -1)).toBe(four);
  });

  it('that were taken up are laid down elsewhere, with all that they hold', () => {
    const taken = takeRows(four, 'log', { first: 2, last: 3 });
    const next = layRows(four, 'log', 0, taken);
    expect(colours(next)).toBe('cdabcd');
    expect(next.typed['log[0].to']).toBe('3x');
    expect(next.typed['log[4].to']).toBe('3x');
    expect(colours(four)).toBe('abcd');
  });

  it('are laid at the end where the place lies beyond it', () => {
    const next = layRows(four, 'log', 9, takeRows(four, 'log', { first: 0, last: 0 }));
    expect(colours(next)).toBe('abcda');
    expect(next.typed['log[5].colour']).toBe('grey');
  });
});
