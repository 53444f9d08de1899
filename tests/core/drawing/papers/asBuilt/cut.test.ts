import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cut } from '../../../../../core/drawing/papers/asBuilt/cut.ts';

describe('a well cut into pages', () => {
  it('is cut at round depths where they go in', () => {
    expect(cut(-0.5, 120, 45, 40)).toEqual([
      { fromM: -0.5, toM: 40 },
      { fromM: 40, toM: 80 },
      { fromM: 80, toM: 120 },
    ]);
  });

  it('leaves no depth out, and none on two pages', () => {
    const sizes = fc.record({
      fromM: fc.double({ min: -3, max: 0, noNaN: true }),
      toM: fc.double({ min: 3, max: 300, noNaN: true }),
      fullM: fc.double({ min: 2, max: 100, noNaN: true }),
      share: fc.double({ min: 0.1, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(sizes, ({ fromM, toM, fullM, share }) => {
        const lastM = fullM * share;
        const ranges = cut(fromM, toM, fullM, lastM);
        if (!ranges) return;
        expect(ranges[0]!.fromM).toBe(fromM);
        expect(ranges.at(-1)!.toM).toBe(toM);
        for (const [at, range] of ranges.entries()) {
          const most = at === ranges.length - 1 ? lastM : fullM;
          expect(range.toM - range.fromM).toBeLessThanOrEqual(most + 1e-6);
          expect(range.toM).toBeGreaterThan(range.fromM);
          if (at > 0) expect(range.fromM).toBe(ranges[at - 1]!.toM);
        }
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  it('keeps something for its last page where it is hardly longer than one', () => {
    const [upper, lower] = cut(0, 10.2, 14, 10)!;
    expect(upper!.toM).toBeLessThan(10.2);
    expect(lower).toEqual({ fromM: upper!.toM, toM: 10.2 });
  });

  it('is cut by the paper that it takes, where a break makes that less than its depth', () => {
    // 30 m are left out from 10 m on.
    const along = {
      of: (depthM: number) => (depthM <= 10 ? depthM : Math.max(10, depthM - 30)),
      depthAt: (at: number) => (at <= 10 ? at : at + 30),
    };
    expect(cut(0, 80, 30, 30, along)).toEqual([
      { fromM: 0, toM: 60 },
      { fromM: 60, toM: 80 },
    ]);
  });

  it('is not cut into more pages than anyone would read, nor onto pages without room', () => {
    expect(cut(0, 300, 20, 20)).toBeUndefined();
    expect(cut(0, 30, 20, 0)).toBeUndefined();
    expect(cut(0, 30, 20, -4)).toBeUndefined();
  });
});
