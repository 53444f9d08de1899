import { describe, expect, it } from 'vitest';
import { convertLength, lengthUnitOf } from '../../../../core/exchange/tables/units.ts';

describe('a length', () => {
  // Source: NIST SP 811, appendix B.6 (foot, inch exact; U.S. survey foot 1200/3937 m).
  it.each([
    [1, 'ft', 'm', 0.3048],
    [193, 'ft', 'm', 58.8264],
    [6, 'in', 'mm', 152.4],
    [0.04, 'in', 'mm', 1.016],
    [3937, 'ftUS', 'm', 1200],
    [450, 'mm', 'm', 0.45],
    [12.5, 'cm', 'mm', 125],
    [2, 'm', 'mm', 2000],
  ] as const)('of %d %s is as many %s as published', (value, from, to, expected) => {
    expect(convertLength(value, from, to)).toBe(expected);
  });

  it('stays digit for digit where the unit is the record’s own', () => {
    expect(convertLength(149.15916124413474, 'm', 'm')).toBe(149.15916124413474);
  });
});

describe('the name of a unit in a cell', () => {
  it('may be spelled out and in any case', () => {
    expect(['metre', 'Feet', 'FT', 'inch', 'ftUS'].map(lengthUnitOf)).toEqual([
      'm',
      'ft',
      'ft',
      'in',
      'ftUS',
    ]);
  });

  it('is not guessed', () => {
    expect(lengthUnitOf('fathom')).toBeUndefined();
    expect(lengthUnitOf('')).toBeUndefined();
  });
});
