import { describe, expect, it } from 'vitest';
import { printable } from '../../../../core/base/text/printable.ts';

describe('printable text', () => {
  it('has a blank for each letter that no line can hold', () => {
    expect(printable('a\tb\r\nc\u0000\u009f\u2028\ud800d\uffff')).toBe('a b  c    d ');
  });

  it('has a box for a letter beyond what a PDF font numbers', () => {
    expect(printable('a😀b')).toBe('a□b');
  });

  it('keeps all other letters, blanks among them', () => {
    const text = '  Ẹ̀kọ́ — ≤ ½ “q” \u00a0';
    expect(printable(text)).toBe(text);
  });
});
