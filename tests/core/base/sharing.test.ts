import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { same, sharing } from '../../../core/base/sharing.ts';

const before = { strata: [{ fromM: 0 }, { fromM: 2 }], totals: { litres: 10 }, depthM: 8 };
const copy = () => structuredClone(before);

describe('plain data that shares with what was before', () => {
  it('is the old object where it says the same', () => {
    expect(sharing(before, copy())).toBe(before);
  });

  it('keeps the parts that stayed and takes the parts that changed', () => {
    const now = sharing(before, { ...copy(), strata: [{ fromM: 0 }, { fromM: 3 }] });
    expect(now).toEqual({ ...before, strata: [{ fromM: 0 }, { fromM: 3 }] });
    expect(now.totals).toBe(before.totals);
    expect(now.strata[0]).toBe(before.strata[0]);
    expect(now.strata).not.toBe(before.strata);
  });

  it.each([
    ['a longer list', [1, 2], [1, 2, 3]],
    ['a shorter list', [1, 2, 3], [1, 2]],
    ['a list for an object', { 0: 1 }, [1]],
    ['an object for a list', [1], { 0: 1 }],
    ['one field more', { a: 1 }, { a: 1, b: undefined }],
    ['one field less', { a: 1, b: undefined }, { a: 1 }],
    ['another field', { b: undefined }, { c: undefined }],
    ['nothing for something', { a: 1 }, undefined],
    ['something for nothing', null, { a: 1 }],
  ])('is the new data where that is %s', (_, old, now) => {
    expect(sharing(old, now)).toStrictEqual(now);
    expect(sharing(old, now)).not.toBe(old);
  });

  it('leaves both as they were', () => {
    const [old, now] = [copy(), { ...copy(), depthM: 9 }];
    sharing(old, now);
    expect(old).toEqual(before);
    expect(now).toEqual({ ...before, depthM: 9 });
  });

  it('says what the new data says, and is the old only where that says the same', () => {
    const json = fc.jsonValue({ maxDepth: 3 });
    fc.assert(
      fc.property(json, json, (old, now) => {
        const shared = sharing(old, now);
        expect(shared).toStrictEqual(now);
        expect(same(old, now)).toBe(same(old, shared));
        expect(same(structuredClone(now), now)).toBe(true);
      }),
      { seed: 11 },
    );
  });
});

it('data say the same when all of their parts do', () => {
  expect(same(before, copy())).toBe(true);
  expect(same(before, { ...copy(), depthM: 9 })).toBe(false);
  expect(same([], {})).toBe(false);
  expect(same({ a: undefined }, { b: undefined })).toBe(false);
  expect(same(NaN, NaN)).toBe(true);
  expect(same(undefined, null)).toBe(false);
});
