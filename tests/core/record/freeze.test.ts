import { describe, expect, it } from 'vitest';
import { deepFreeze } from '../../../core/record/freeze.ts';

describe('deepFreeze', () => {
  it('freezes lists and groups within each other and gives the value back', () => {
    const value = { a: [{ b: { c: 1 } }] };
    expect(deepFreeze(value)).toBe(value);
    expect(() => (value.a[0]!.b.c = 2)).toThrow(TypeError);
    expect(() => value.a.push({ b: { c: 3 } })).toThrow(TypeError);
  });

  it('leaves what is no object as it is', () => {
    expect(deepFreeze(5)).toBe(5);
    expect(deepFreeze(null)).toBe(null);
  });

  it('bears any depth of nesting', () => {
    let nested: unknown[] = [];
    for (let depth = 0; depth < 100_000; depth++) nested = [nested];
    expect(Object.isFrozen(deepFreeze(nested))).toBe(true);
  });
});
