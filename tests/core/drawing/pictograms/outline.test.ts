import { describe, expect, it } from 'vitest';
import { readOutline } from '../../../../core/drawing/pictograms/outline.ts';

describe('an outline', () => {
  it('is read verb by verb, with signs and decimals', () => {
    expect(readOutline('M1 -2.5 L3 4 C1 2 3 4 5 6 Z')).toEqual([
      ['M', 1, -2.5],
      ['L', 3, 4],
      ['C', 1, 2, 3, 4, 5, 6],
      ['Z'],
    ]);
  });

  it('that has a verb that is not known, or lacks numbers, is a defect', () => {
    expect(() => readOutline('M1 2 A3 4')).toThrow('“A”');
    expect(() => readOutline('M1 2 L3')).toThrow('lacks numbers');
    expect(() => readOutline('1 2')).toThrow('“1”');
  });
});
