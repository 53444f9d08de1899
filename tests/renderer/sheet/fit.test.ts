import { describe, expect, it } from 'vitest';
import { fitted, inSight } from '../../../renderer/sheet/fit.ts';

const a4 = { width: 210, height: 297 };

describe('a page that fits its window', () => {
  it('stands whole and in the middle', () => {
    const { k, x, y } = fitted('page', a4, { width: 1000, height: 618 });
    expect(k).toBeCloseTo(2);
    expect(x).toBeCloseTo((1000 - 420) / 2);
    expect(y).toBeCloseTo(12);
  });

  it('fills the width and begins at the top', () => {
    const { k, x, y } = fitted('width', a4, { width: 654, height: 300 });
    expect([k, x, y]).toEqual([3, 12, 12]);
  });

  it('does not turn over in a window that has no room', () => {
    expect(fitted('page', a4, { width: 0, height: 0 }).k).toBeGreaterThan(0);
  });
});

describe('a box in sight', () => {
  const sight = { width: 100, height: 100 };
  const box = { x: 10, y: 10, width: 5, height: 5 };

  it('is one of which any part stands in the window', () => {
    expect(inSight(box, { k: 2, x: 0, y: 0 }, sight)).toBe(true);
    expect(inSight(box, { k: 2, x: -25, y: 0 }, sight)).toBe(true);
    expect(inSight(box, { k: 2, x: -31, y: 0 }, sight)).toBe(false);
    expect(inSight(box, { k: 2, x: 0, y: 81 }, sight)).toBe(false);
  });
});
