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

const table = groundBlocks().find((one) => 'list' in one && one.list === 'log') as TableBlock;
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
    const { log } = sortRows(desk, 'log', ['from']).record;
    expect(log?.map(({ from: top, colour }) => colour ?? top)).toEqual(['red', 'grey', 4]);
  });

  it('come by the first of several numbers, then by the next; those without one come last', () => {
    const desk = deskOf([
      { from: 4, to: 5 },
      { from: 0, to: 3 },
      { from: 0, to: 2 },
      { to: 1 },
    ] as never);
    const { log } = sortRows(desk, 'log', ['from', 'to']).record;
    expect(log?.map(({ to }) => to)).toEqual([2, 3, 5, 1]);
  });

  it('are the same desk when they were in order already', () => {
    expect(sortRows(two, 'log', ['from'])).toBe(two);
  });
});

describe('pasting from a spreadsheet', () => {
  it('fills cells to the right and rows down, and makes new rows at the end', () => {
    const next = pasteIntoRows(two, rows, 1, 1, [
      ['6,5', 'sand', '', 'grey'],
      ['8', 'gravel', 'slightly silt', ''],
    ]);
    // The first line gives row 2 its foot; the second, from the foot on, becomes row 3.
    expect(next.record.log?.slice(1)).toEqual([
      { from: 2, to: 6.5, material: 'sand', colour: 'grey' },
      {
        from: 6.5,
        to: 8,
        material: 'gravel',
        qualifiers: [{ material: 'silt', degree: 'slightly' }],
      },
    ]);
  });

  it('keeps every cell that cannot be read, in its place', () => {
    const next = pasteIntoRows(two, rows, 0, 1, [['two', 'topsoil']]);
    expect(next.typed).toEqual({ 'log[0].to': 'two' });
  });
});

describe('a row that is inserted', () => {
  const placed = { ...rows, place: 1 };

  it('starts where the row before it ended, not where the last one did', () => {
    expect(shownInRow(two, placed, 2, from)).toBe('2');
  });

  it('takes its place when it is complete, and what cannot be read goes with it', () => {
    const odd = enterInRow(two, placed, 2, material, 'zzz');
    const next = enterInRow(odd, placed, 2, to, '2,5');
    expect(next.record.log?.map(({ to: foot }) => foot)).toEqual([2, 2.5, 5.5]);
    expect(next.typed).toEqual({ 'log[1].material': 'zzz' });
  });

  it('leaves what is typed in the rows below it with them', () => {
    const odd = enterInRow(two, rows, 1, material, 'zzz');
    expect(enterInRow(odd, placed, 2, to, '3').typed).toEqual({ 'log[2].material': 'zzz' });
  });

  it('may be several that are pasted, in their order', () => {
    const next = pasteIntoRows(two, placed, 2, 0, [
      ['2', '3', 'sand'],
      ['3', '4', 'silt'],
    ]);
    expect(next.record.log?.map(({ material: one }) => one)).toEqual([
      'topsoil',
      'sand',
      'silt',
      'clay',
    ]);
  });
});

describe('one text for several cells', () => {
  const seconds = [{ material: 'clay' }];

  it('fills them all', () => {
    const next = enterInRow(two, rows, 1, material, 's/c');
    expect(next.record.log?.[1]).toMatchObject({ material: 'sand', qualifiers: seconds });
  });

  it('waits in them all while the row is not complete', () => {
    const next = enterInRow(enterInRow(two, rows, 2, material, 's/c'), rows, 2, to, '7');
    expect(next.record.log?.[2]).toEqual({
      from: 5.5,
      to: 7,
      material: 'sand',
      qualifiers: seconds,
    });
  });

  it('goes with the row that it completes to where that is inserted', () => {
    const samples = groundBlocks()[0] as TableBlock;
    const desk: Desk = deepFreeze({
      record: {
        schemaVersion: 1,
        samples: [
          { from: 0, to: 1 },
          { from: 1, to: 2 },
        ],
      },
      typed: {},
    });
    const placed = { ...rowsOf(samples, 'samples'), place: 1 };
    const field = placed.fields.find(({ name }) => name === 'material')!;
    expect(enterInRow(desk, placed, 2, field, 's/c').record.samples).toEqual([
      { from: 0, to: 1 },
      { from: 1, to: 2, material: 'sand', qualifiers: seconds },
      { from: 1, to: 2 },
    ]);
  });
});
