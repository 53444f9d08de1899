import { describe, expect, it } from 'vitest';
import { drawRows, rowsWithin } from '../../../../core/drawing/parts/block.ts';
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
