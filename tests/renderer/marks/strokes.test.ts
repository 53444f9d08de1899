import { describe, expect, it } from 'vitest';
import { grown, pointIn, strokePath } from '../../../renderer/marks/strokes.ts';

const box = { left: 10, top: 20, width: 200, height: 80 };

describe('a stroke of a mark', () => {
  it('is in the box of 100 by 40, however large the pad stands on the screen', () => {
    expect(pointIn(box, 10, 20)).toEqual([0, 0]);
    expect(pointIn(box, 110, 60)).toEqual([50, 20]);
    expect(pointIn(box, 210, 100)).toEqual([100, 40]);
  });

  it('stays in the box when the hand leaves it', () => {
    expect(pointIn(box, -500, 900)).toEqual([0, 40]);
  });

  it('takes no point that is as good as the last one', () => {
    const stroke = grown([], [1, 1]);
    expect(grown(stroke, [1.3, 1.3])).toBe(stroke);
    expect(grown(stroke, [2, 1])).toEqual([
      [1, 1],
      [2, 1],
    ]);
  });

  it('is a line for the screen', () => {
    expect(
      strokePath([
        [1, 2],
        [3, 4.5],
      ]),
    ).toBe('M1 2L3 4.5');
  });
});
