import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvLine } from '../../../../core/exchange/csv/csvLine.ts';
import { asWritten, withoutFormula } from '../../../../core/exchange/csv/formula.ts';
import { readRows } from '../../../../core/exchange/tables/rows.ts';

// Beginnings that spreadsheets run: common practice.
test.each(['=1+1', '+cmd', '-2+3', '@SUM(A1)', '\tx', "'=1+1"])('%j is not run', (text) => {
  expect(withoutFormula(text)).toBe(`'${text}`);
  expect(asWritten(withoutFormula(text))).toBe(text);
});

test.each(['-5.2', '+3', 'clay', "'tis", '', '-1e3'])('%j stands as it is', (text) => {
  expect(withoutFormula(text)).toBe(text);
  expect(asWritten(text)).toBe(text);
});

test('any cells come back as they were', () => {
  const cell = fc.string().filter((text) => !text.includes('\r'));
  fc.assert(
    fc.property(fc.array(cell, { minLength: 2, maxLength: 4 }), (cells) => {
      const { rows } = readRows(csvLine(['a', 'b']) + csvLine(cells), ',');
      fc.pre(cells.some((text) => text !== ''));
      expect(rows[0]!.cells).toEqual(cells);
    }),
  );
});
