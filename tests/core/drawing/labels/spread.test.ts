import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread, type Wanted } from '../../../../core/drawing/labels/spread.ts';

const labels = (most: number, sizes: fc.Arbitrary<number>) =>
  fc
    .array(fc.record({ middle: sizes, height: fc.integer({ min: 1, max: 3 }) }), {
      minLength: 1,
      maxLength: most,
    })
    .map((all) => all.sort((a, b) => a.middle - b.middle));

const anyLabels = labels(20, fc.double({ min: -20, max: 120, noNaN: true }));

function cost(wanted: readonly Wanted[], tops: readonly number[]): number {
  return wanted.reduce(
    (sum, { middle, height }, at) => sum + (tops[at]! + height / 2 - middle) ** 2,
    0,
  );
}

/** The least cost of all places on a grid of half millimetres, tried one by one. */
function leastOnGrid(wanted: readonly Wanted[], from: number, to: number): number {
  const [first, ...rest] = wanted;
  if (!first) return 0;
  let least = Infinity;
  for (let top = from; top + first.height <= to; top += 0.5) {
    const own = cost([first], [top]);
    if (own < least) least = Math.min(least, own + leastOnGrid(rest, top + first.height, to));
  }
  return least;
}

describe('spread', () => {
  it('leaves labels where they wish to stand when they do not meet', () => {
    const wanted = [
      { middle: 10, height: 4 },
      { middle: 20, height: 4 },
    ];
    expect(spread(wanted, 0, 100)).toEqual([8, 18]);
  });

  it('moves two that meet apart by the same amount', () => {
    const wanted = [
      { middle: 10, height: 4 },
      { middle: 10, height: 4 },
    ];
    expect(spread(wanted, 0, 100)).toEqual([6, 10]);
  });

  it('keeps order and room, and none over another', () => {
    fc.assert(
      fc.property(anyLabels, (wanted) => {
        const tops = spread(wanted, 0, 100)!;
        expect(tops).toHaveLength(wanted.length);
        expect(tops[0]).toBeGreaterThanOrEqual(-1e-9);
        expect(tops.at(-1)! + wanted.at(-1)!.height).toBeLessThanOrEqual(100 + 1e-9);
        for (const [at, top] of tops.slice(1).entries())
          expect(top).toBeGreaterThanOrEqual(tops[at]! + wanted[at]!.height - 1e-6);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('displaces them no more than the best of all places tried one by one', () => {
    const few = labels(4, fc.integer({ min: -2, max: 14 }));
    fc.assert(
      fc.property(few, fc.integer({ min: 0, max: 3 }), (wanted, spare) => {
        const room = wanted.reduce((sum, { height }) => sum + height, 0) + spare;
        const tops = spread(wanted, 0, room)!;
        expect(cost(wanted, tops)).toBeLessThanOrEqual(leastOnGrid(wanted, 0, room) + 1e-9);
      }),
      { seed: 2, numRuns: 200 },
    );
  });

  it('says so when they are higher together than the room', () => {
    const wanted = [
      { middle: 5, height: 4 },
      { middle: 6, height: 4 },
    ];
    expect(spread(wanted, 0, 7.9)).toBeUndefined();
    expect(spread(wanted, 0, 8)).toEqual([0, 4]);
  });
});
