import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../../../../core/record/freeze.ts';
import { rowsOf, type TableBlock } from '../../../../renderer/editors/chapter.ts';
import { groundBlocks } from '../../../../renderer/editors/chapters/ground.ts';
import type { Desk } from '../../../../renderer/state/desk.ts';
import { fillDown } from '../../../../renderer/state/rowEdits/fillDown.ts';

const table = groundBlocks().find((one) => 'list' in one && one.list === 'log') as TableBlock;
const rows = rowsOf(table, 'log');
const named = (name: string) => rows.fields.find((field) => field.name === name)!;
const desk: Desk = deepFreeze({
  record: {
    schemaVersion: 1,
    log: [
      { from: 0, to: 1, colour: 'red' },
      { from: 1, to: 2 },
      { from: 2, to: 3, colour: 'grey' },
    ],
  },
  typed: {},
});
const colours = (next: Desk) => next.record.log?.map(({ colour }) => colour);

describe('filling down', () => {
  it('writes the top of several rows into those below it', () => {
    expect(colours(fillDown(desk, rows, { first: 0, last: 2 }, named('colour')))).toEqual([
      'red',
      'red',
      'red',
    ]);
  });

  it('takes it from the row above where one row is marked', () => {
    expect(colours(fillDown(desk, rows, { first: 1, last: 1 }, named('colour')))).toEqual([
      'red',
      'red',
      'grey',
    ]);
  });

  it('reaches the row that waits', () => {
    const next = fillDown(desk, rows, { first: 3, last: 3 }, named('colour'));
    expect(next.typed).toEqual({ 'log[3].colour': 'grey' });
  });

  it('takes a text along that cannot be read, as it was typed', () => {
    const odd = { ...desk, typed: { 'log[0].material': 'zzz' } };
    const next = fillDown(odd, rows, { first: 0, last: 1 }, named('material'));
    expect(next.typed['log[1].material']).toBe('zzz');
  });

  it('changes nothing below nothing', () => {
    expect(fillDown(desk, rows, { first: 0, last: 0 }, named('colour'))).toBe(desk);
    expect(fillDown(desk, rows, { first: 1, last: 2 }, named('colour'))).toBe(desk);
  });
});
