import { describe, expect, it } from 'vitest';
import { chooseStraightPart, lastPart } from '../../../../core/hydraulics/fit/straightPart.ts';

const always = () => true;
const tenths = (count: number) => Array.from({ length: count }, (_, at) => at / 10);

/** Readings each tenth of a cycle with a slope of 1, and of `late` from `breakAt` on. */
function broken(count: number, breakAt: number, late: number) {
  const x = tenths(count);
  return { x, y: x.map((one) => (one <= breakAt ? one : breakAt + late * (one - breakAt))) };
}

describe('the straight part', () => {
  it('is all of what is straight', () => {
    const found = chooseStraightPart(broken(21, 99, 1), always)!;
    expect([found.first, found.last]).toEqual([0, 20]);
    expect(found.line.slope).toBeCloseTo(1, 9);
  });

  it('is the longer branch of two', () => {
    expect(chooseStraightPart(broken(31, 2, 3), always)!.line.slope).toBeCloseTo(1, 1);
    expect(chooseStraightPart(broken(31, 1, 3), always)!.line.slope).toBeCloseTo(3, 1);
  });

  it('is the later branch of two as long', () => {
    expect(chooseStraightPart(broken(21, 1, 3), always)!.line.slope).toBeGreaterThan(2.8);
  });

  it('begins where the method allows', () => {
    const found = chooseStraightPart(broken(21, 99, 1), ({ first }) => first >= 6)!;
    expect(found.first).toBe(6);
  });

  it('is none of what falls, of few readings, or of too short a time', () => {
    expect(chooseStraightPart(broken(21, 0, -1), always)).toBeUndefined();
    expect(chooseStraightPart(broken(4, 99, 1), always)).toBeUndefined();
    const short = tenths(8).map((one) => one / 2);
    expect(chooseStraightPart({ x: short, y: short }, always)).toBeUndefined();
  });

  it('is found among thousands of readings', () => {
    const x = Array.from({ length: 5000 }, (_, at) => Math.log10(at + 1));
    const found = chooseStraightPart({ x, y: x }, always)!;
    expect([found.first, found.last]).toEqual([0, 4999]);
  });
});

describe('the last part', () => {
  it('goes over half a cycle, or over five readings where those reach farther back', () => {
    expect(lastPart(broken(21, 99, 1))).toMatchObject({ first: 15, last: 20 });
    const sparse = { x: [0, 1, 2, 3, 4, 5], y: [0, 1, 2, 3, 4, 5] };
    expect(lastPart(sparse)).toMatchObject({ first: 1, last: 5 });
    expect(lastPart({ x: [0, 1], y: [0, 1] })).toMatchObject({ first: 0, last: 1 });
  });
});
