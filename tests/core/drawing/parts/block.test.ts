import { describe, expect, it } from 'vitest';
import {
  drawRows,
  fittingColumns,
  rowsWithin,
  unfolded,
} from '../../../../core/drawing/parts/block.ts';
import { widthOf } from '../../../../core/drawing/letters.ts';
import { lineHeight } from '../../../../core/drawing/pens.ts';
import { kit, textsOf } from '../sample.ts';

const rows = ['one', 'two', 'three', 'four'].map((one) => ({ cells: [one, '1.00'] }));
const columns = [
  { width: 20, anchor: 'start' },
  { width: 10, anchor: 'end' },
] as const;

describe('rows', () => {
  it('stand in columns, words from the left and figures to the right', () => {
    const texts = textsOf(drawRows(kit, columns, rows, 30, 50));
    const words = texts.filter((_, at) => at % 2 === 0);
    const figures = texts.filter((_, at) => at % 2 === 1);
    expect(new Set(words.map(({ x }) => x))).toEqual(new Set([30]));
    for (const { x, width } of figures) expect(x + width).toBeCloseTo(30 + 30 - 0.8, 9);
  });

  it('cut a text that is too wide for its cell', () => {
    const [text] = textsOf(drawRows(kit, columns, [{ cells: ['w'.repeat(40)] }], 0, 0));
    expect(text!.text).toMatch(/…$/);
    expect(text!.width).toBeLessThanOrEqual(20 - 0.8);
  });
});

describe('columns that fit their words', () => {
  const widthsFor = (...cells: string[][]) =>
    fittingColumns(
      kit,
      columns,
      cells.map((one) => ({ cells: one })),
    ).map(({ width }) => width);

  it('stay as they are where all words go in', () => {
    expect(widthsFor(['one', '1.00'], ['two', ''])).toEqual([20, 10]);
  });

  it('give the widest what the others do not need, and take nothing from the whole', () => {
    const [words, figures] = widthsFor(['w'.repeat(12), '1.00']);
    expect(words).toBeGreaterThan(20);
    expect(figures).toBeGreaterThan(widthOf(kit, '1.00') + 0.8);
    expect(words! + figures!).toBeCloseTo(30, 9);
  });

  it('take from the widest what a figure needs', () => {
    const [words, figures] = widthsFor(['one', '1 234 567.00']);
    expect(figures).toBeGreaterThan(10);
    expect(words! + figures!).toBeCloseTo(30, 9);
  });

  it('stay as they are rather than leave the widest less than half of its room', () => {
    expect(widthsFor(['one', '1'.repeat(60)])).toEqual([20, 10]);
  });

  it('measure bold words as bold', () => {
    const rows = [{ cells: ['one', '1234567'], bold: true }];
    const text = widthOf(kit, '1234567', { face: 'bold' });
    expect(fittingColumns(kit, columns, rows)[1]!.width).toBeGreaterThanOrEqual(text + 0.8);
  });
});

describe('rows whose words are too long', () => {
  const long = { cells: ['words that go on and on', '1.00'], source: 'log[0]', bold: true };

  it('go on on further lines of the same source, their figures beside the first', () => {
    const lines = unfolded(kit, [long], 0, 20);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.map(({ cells }) => cells[0]).join(' ')).toBe(long.cells[0]);
    expect(lines.map(({ cells }) => cells[1])).toEqual(['1.00', ...lines.slice(1).map(() => '')]);
    for (const { source, bold } of lines) expect([source, bold]).toEqual(['log[0]', true]);
  });

  it('stay on one line where they go in, and so does a row without the cell', () => {
    const short = [{ cells: ['one', '1.00'] }, { cells: ['', '2.00'] }];
    expect(unfolded(kit, short, 0, 20)).toEqual(short);
  });

  it('are left out whole, and counted as rows and not as lines', () => {
    const all = unfolded(kit, [long, long, long], 0, 20);
    const height = (all.length - 1) * lineHeight('small');
    const kept = rowsWithin(kit, all, height, 0);
    expect(kept).toHaveLength((all.length / 3) * 2 + 1);
    expect(kept.at(-1)!.cells).toEqual(['1 more; see the record']);
  });
});

describe('rows within a height', () => {
  it('are all of them where they go in', () => {
    expect(rowsWithin(kit, rows, 4 * lineHeight('small'), 0)).toEqual(rows);
  });

  it('end in a row that counts those left out', () => {
    const kept = rowsWithin(kit, rows, 3 * lineHeight('small'), 1);
    expect(kept.slice(0, 2)).toEqual(rows.slice(0, 2));
    expect(kept[2]!.cells).toEqual(['', '2 more; see the record']);
    expect(kept).toHaveLength(3);
  });

  it('are that one row alone where there is no room', () => {
    expect(rowsWithin(kit, rows, -5, 0).map(({ cells }) => cells)).toEqual([
      ['4 more; see the record'],
    ]);
  });
});
