import { describe, expect, it } from 'vitest';
import { readRows } from '../../../../core/exchange/tables/rows.ts';

describe('rows of delimited text', () => {
  it('carry the line on which they begin, past blank lines and cells of several lines', () => {
    const { heading, rows } = readRows('a,b\r\n1,"x\r\ny\r\nz"\r\n\r\n2,3\r\n4,5', ',');
    expect(heading).toEqual(['a', 'b']);
    expect(rows).toEqual([
      { line: 2, cells: ['1', 'x\ny\nz'] },
      { line: 6, cells: ['2', '3'] },
      { line: 7, cells: ['4', '5'] },
    ]);
  });

  it('are the same with a byte order mark and with any kind of line end', () => {
    const plain = readRows('a;b\n1;2\n3;4\n', ';');
    expect(readRows('\uFEFFa;b\r1;2\r3;4\r', ';')).toEqual(plain);
    expect(readRows('a;b\r\n1;2\r\n3;4', ';')).toEqual(plain);
  });

  it('keep an inch mark that stands within a cell', () => {
    expect(readRows('a,b\n1,6" casing\n2,x', ',').rows.map(({ cells }) => cells)).toEqual([
      ['1', '6" casing'],
      ['2', 'x'],
    ]);
  });

  it('end, with its line, where a quotation mark is never closed', () => {
    const { rows, broken } = readRows('a,b\n1,2\n3,"open\n4,5\n', ',');
    expect(rows).toEqual([{ line: 2, cells: ['1', '2'] }]);
    expect(broken?.line).toBe(3);
    expect(broken?.says.code).toBe('unclosedQuote');
  });

  it('are none in an empty file', () => {
    expect(readRows('', ',')).toEqual({ heading: [], rows: [] });
  });
});
