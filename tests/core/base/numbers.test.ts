import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDepth, formatFixed, formatShort } from '../../../core/base/numbers.ts';

describe('a number with fixed decimals', () => {
  it('keeps the zeros that end it', () => {
    expect(formatFixed(24, 2)).toBe('24.00');
    expect(formatFixed(0.5, 3)).toBe('0.500');
    expect(formatFixed(7, 0)).toBe('7');
  });

  it('rounds the half that was written away from zero, though a double stands just under it', () => {
    expect(formatFixed(2.675, 2)).toBe('2.68');
    expect(formatFixed(1.005, 2)).toBe('1.01');
    expect(formatFixed(-2.675, 2)).toBe('-2.68');
    expect(formatFixed(2.674, 2)).toBe('2.67');
  });

  it('has no negative zero', () => {
    expect(formatFixed(-0, 2)).toBe('0.00');
    expect(formatFixed(-0.004, 2)).toBe('0.00');
    expect(formatFixed(-0.4, 0)).toBe('0');
  });

  it('takes the decimal mark of a language', () => {
    expect(formatFixed(-12.345, 1, ',')).toBe('-12,3');
  });

  it('writes large numbers without an exponent', () => {
    expect(formatFixed(1e15, 2)).toBe('1000000000000000.00');
    expect(formatFixed(1e21, 1)).toBe('1000000000000000000000.0');
  });

  it('is a dash for what is no finite number', () => {
    for (const value of [NaN, Infinity, -Infinity]) expect(formatFixed(value, 2)).toBe('–');
  });

  it('reads back within half of its last digit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        (value, decimals) => {
          const text = formatFixed(value, decimals);
          expect(text).toMatch(
            decimals === 0 ? /^-?\d+$/ : new RegExp(`^-?\\d+\\.\\d{${decimals}}$`),
          );
          expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.5001 * 10 ** -decimals);
        },
      ),
      { seed: 11 },
    );
  });
});

describe('a depth', () => {
  it('is written to the centimetre', () => {
    expect(formatDepth(28.1)).toBe('28.10');
    expect(formatDepth(-0.45, ',')).toBe('-0,45');
  });
});

describe('a short number', () => {
  it('drops the zeros that end its decimals, and no others', () => {
    expect(formatShort(110, 1)).toBe('110');
    expect(formatShort(4.2, 2)).toBe('4.2');
    expect(formatShort(4.2, 2, ',')).toBe('4,2');
    expect(formatShort(100, 0)).toBe('100');
  });
});
