import { describe, expect, it } from 'vitest';
import { leaveOut, placeInDocument } from '../../../core/record/prune.ts';

describe('leaveOut', () => {
  it('closes up lists within lists and leads back through both', () => {
    const document = { a: [{ b: [0, 1, 2] }, { b: [3] }, { b: [4, 5] }] };
    const { value, places } = leaveOut(document, new Set(['a[0]', 'a[2].b[0]']));
    expect(value).toEqual({ a: [{ b: [3] }, { b: [5] }] });
    expect(placeInDocument(places, 'a[1].b[0]')).toBe('a[2].b[1]');
    expect(placeInDocument(places, 'a[0].b[0]')).toBe('a[1].b[0]');
  });

  it('gives the document itself where nothing is to go', () => {
    const document = { a: [1] };
    expect(leaveOut(document, new Set()).value).toBe(document);
  });

  it('shares the parts that it does not touch', () => {
    const document = { a: { x: 1 }, b: { c: 1 } };
    const { value } = leaveOut(document, new Set(['b.c']));
    expect((value as typeof document).a).toBe(document.a);
    expect(value).toEqual({ a: { x: 1 }, b: {} });
  });

  it('puts in what stands in, for a part that is wrong and for one that is missing', () => {
    const standIns = { 'a[].b': [] };
    const document = { a: [{ b: 5 }, { c: 1 }] };
    expect(leaveOut(document, new Set(['a[0].b', 'a[1].b']), standIns).value).toEqual({
      a: [{ b: [] }, { b: [], c: 1 }],
    });
  });
});
