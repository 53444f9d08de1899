import { describe, expect, it } from 'vitest';
import {
  endOfValue,
  entriesOf,
  membersOf,
  skipSpace,
  Unparsed,
} from '../../../../electron/seal/pdf/scan.ts';

/** What stands first in a text. */
const first = (text: string) => text.slice(0, endOfValue(text, 0));

describe('the values of a PDF', () => {
  it('end where ISO 32000-1, 7.3, has them end', () => {
    // Examples of ISO 32000-1, 7.3.2 to 7.3.7 (from memory).
    const values = [
      'true',
      '-.002',
      '(Strings may contain balanced parentheses ( ) and special characters (*!&}^% and so on).)',
      '(one \\) more)',
      '<4E6F762073686D6F7A>',
      '/A;Name_With-Various***Characters?',
      '/',
      '[549 3.14 false (Ralph) /SomeName]',
      '<</Type /Example /Sub <</Item1 0.4 /Last (not >> yet)>>>>',
      '12 0 R',
    ];
    for (const value of values) expect(first(`${value} /Next 1`)).toBe(value);
    expect(first('12 0 obj')).toBe('12');
    expect(first('1 0 Room')).toBe('1');
  });

  it('stand behind comments', () => {
    expect(skipSpace('  % a (comment\n\t/X', 0)).toBe(16);
  });

  it('are found by their keys', () => {
    const text = '<< /A 1 /B[2 0 R<<>>]/C(x) >>';
    const entries = entriesOf(text, 0);
    const values = [...entries].map(([key, { start, end }]) => [key, text.slice(start, end)]);
    expect(values).toEqual([
      ['A', '1'],
      ['B', '[2 0 R<<>>]'],
      ['C', '(x)'],
    ]);
    const members = membersOf(text, entries.get('B')!.start);
    expect(members.map(({ start, end }) => text.slice(start, end))).toEqual(['2 0 R', '<<>>']);
  });

  it('are none where they have no end, or a key stands twice', () => {
    for (const text of ['(open', '<12', '[1 2', '<< /A 1', '', '>', ')'])
      expect(() => endOfValue(text, 0)).toThrow(Unparsed);
    expect(() => entriesOf('<< /A 1 /A 2 >>', 0)).toThrow(Unparsed);
    expect(() => entriesOf('<< 1 2 >>', 0)).toThrow(Unparsed);
  });
});
