import { expect, it } from 'vitest';
import { withAdded, withMoved } from '../../../../renderer/archive/binders/pickedIds.ts';

it('wells are added behind those that are there, each once, up to the most', () => {
  expect(withAdded(['b'], ['a', 'b', 'c'], 9)).toEqual(['b', 'a', 'c']);
  expect(withAdded(['b'], ['a', 'c'], 2)).toEqual(['b', 'a']);
});

it('wells that are there stay, though they be more than may be added', () => {
  expect(withAdded(['a', 'b', 'c'], ['d'], 2)).toEqual(['a', 'b', 'c']);
});

it('a well moves by one place, and stays where there is none', () => {
  const ids = ['a', 'b', 'c'];
  expect(withMoved(ids, 1, -1)).toEqual(['b', 'a', 'c']);
  expect(withMoved(ids, 1, 1)).toEqual(['a', 'c', 'b']);
  expect(withMoved(ids, 0, -1)).toBe(ids);
  expect(withMoved(ids, 2, 1)).toBe(ids);
});
