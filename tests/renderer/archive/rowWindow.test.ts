import { describe, expect, it } from 'vitest';
import { rowFor, rowPx, rowWindow, scrollFor } from '../../../renderer/archive/rowWindow.ts';

const height = 10 * rowPx;

describe('the rows of a long list', () => {
  it('are made where it is seen and a little beyond, and never outside it', () => {
    const at = (total: number, row: number) => rowWindow(total, row * rowPx, height);
    expect(at(1000, 0)).toEqual({ first: 0, end: 22 });
    expect(at(1000, 500)).toEqual({ first: 488, end: 522 });
    expect(at(1000, 990)).toEqual({ first: 978, end: 1000 });
    expect(at(3, 0)).toEqual({ first: 0, end: 3 });
    expect(at(0, 0)).toEqual({ first: 0, end: 0 });
  });

  it('are a good many where the window’s height is not known', () => {
    expect(rowWindow(1000, 0, 0).end).toBeGreaterThan(40);
  });

  it('come into sight by the least scroll, from under the heads', () => {
    expect(scrollFor(5, 0, height, rowPx)).toBeUndefined();
    expect(scrollFor(2, 4 * rowPx, height, rowPx)).toBe(2 * rowPx);
    expect(scrollFor(9, 0, height, rowPx)).toBe(rowPx);
  });

  it.each([
    ['ArrowDown', 5, 6],
    ['ArrowUp', 0, 0],
    ['PageDown', 5, 13],
    ['PageUp', 5, 0],
    ['Home', 50, 0],
    ['End', 5, 99],
    ['ArrowDown', 99, 99],
  ])('are reached by %s from row %i: row %i', (key, from, to) => {
    expect(rowFor(key, from, 100, height)).toBe(to);
  });

  it('are left alone by other keys', () => {
    expect(rowFor('a', 5, 100, height)).toBeUndefined();
  });
});
