import { describe, expect, it } from 'vitest';
import { Memory } from '../../../core/base/memory.ts';

/** A work that counts how often it is done. */
function counted() {
  const done: unknown[][] = [];
  const work = (...of: unknown[]) => {
    done.push(of);
    return { of };
  };
  return { done, work };
}

describe('a memory', () => {
  it('gives the earlier answer to a question about the same data', () => {
    const memory = new Memory();
    const { done, work } = counted();
    const first = memory.recall('depths', work, [{ fromM: 0 }, 3]);
    expect(memory.recall('depths', work, [{ fromM: 0 }, 3])).toBe(first);
    expect(done).toHaveLength(1);
  });

  it('asks again about other data, and under another name', () => {
    const memory = new Memory();
    const { done, work } = counted();
    memory.recall('depths', work, [{ fromM: 0 }]);
    memory.recall('depths', work, [{ fromM: 1 }]);
    memory.recall('depths', work, [{ fromM: 0 }, undefined]);
    memory.recall('widths', work, [{ fromM: 0 }]);
    expect(done).toHaveLength(4);
  });

  it('keeps several answers, and of many the latest asked for', () => {
    const memory = new Memory();
    const { done, work } = counted();
    const ask = (value: number) => memory.recall('depths', work, [value]);
    for (const value of [1, 2, 3, 1, 2, 3]) ask(value);
    expect(done).toHaveLength(3);
    for (let value = 10; value < 17; value += 1) ask(value);
    ask(3);
    expect(done).toHaveLength(10);
    ask(1);
    expect(done.at(-1)).toEqual([1]);
    expect(done).toHaveLength(11);
  });

  it('shares data with what had the same name before', () => {
    const memory = new Memory();
    const first = memory.share('model', { bore: { depthM: 8 }, levels: [1] });
    const second = memory.share('model', { bore: { depthM: 8 }, levels: [2] });
    expect(second).toEqual({ bore: { depthM: 8 }, levels: [2] });
    expect(second.bore).toBe(first.bore);
    expect(memory.share('plan', { bore: { depthM: 8 } }).bore).not.toBe(first.bore);
  });
});
