import { describe, expect, it } from 'vitest';
import type { Component } from '../../../core/record/strings.ts';
import { resolve } from './well.ts';

type Sizes = Partial<Pick<Component, 'outside' | 'wall' | 'inside'>>;

/** What is said of one pipe of 10 m in another of 20 m, in a hole of 400 mm. */
function nested(outer: Sizes, inner: Sizes, holeMm = 400) {
  const pipe = (sizes: Sizes, length: number) => ({
    components: [{ kind: 'plain' as const, length, ...sizes }],
    set: { by: 'bottom' as const, depth: length },
  });
  const { findings } = resolve({
    bore: { sections: [{ from: 0, to: 30, diameter: holeMm }] },
    strings: [pipe(outer, 20), pipe(inner, 10)],
  });
  return findings
    .filter(({ code }) => /wider|noRoom|Wider/.test(code))
    .map(({ code, fromM, toM, values }) => [code, fromM, toM, values]);
}

describe('two strings, one in the other', () => {
  it('may touch where both walls are known', () => {
    expect(nested({ outside: 160, wall: 5 }, { outside: 150, wall: 4 })).toEqual([]);
    expect(nested({ outside: 160, wall: 5 }, { outside: 151, wall: 4 })).toEqual([
      ['string.widerThanOuter', 0, 10, { string: 2, outer: 1, outsideMm: 151, insideMm: 150 }],
    ]);
  });

  it('of one outside diameter cannot be so, whatever their walls', () => {
    expect(nested({ outside: 323 }, { outside: 323 })).toEqual([
      ['string.noRoomInOuter', 0, 10, { string: 2, outer: 1, sizeMm: 323, roomMm: 323 }],
    ]);
    expect(nested({ outside: 323 }, { outside: 322 })).toEqual([]);
  });

  it('of one inside diameter cannot be so either', () => {
    expect(nested({ inside: 100 }, { inside: 100 })).toEqual([
      ['string.noRoomInOuter', 0, 10, { string: 2, outer: 1, sizeMm: 100, roomMm: 100 }],
    ]);
    expect(nested({ inside: 152 }, { inside: 100 })).toEqual([]);
  });

  it('are not judged where nothing of one is known', () => {
    expect(nested({}, { outside: 110 })).toEqual([]);
  });
});

describe('a string of which the inside alone is known', () => {
  it('is wider than a hole of its inside', () => {
    const one = { inside: 150 };
    expect(nested(one, { outside: 20 }, 151)).toEqual([]);
    expect(nested(one, { outside: 20 }, 150)).toEqual([
      ['string.insideWiderThanHole', 0, 20, { string: 1, insideMm: 150, holeMm: 150 }],
    ]);
  });

  it('stands round a narrower one, in whatever order they were set', () => {
    expect(nested({ outside: 60, wall: 3 }, { inside: 100 })).toEqual([]);
  });
});
