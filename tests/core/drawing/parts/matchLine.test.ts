import { describe, expect, it } from 'vitest';
import { drawMatchLines } from '../../../../core/drawing/parts/matchLine.ts';
import { yAt } from '../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, viewOf, wordsOf } from '../sample.ts';

const upper = viewOf({ toM: 20, last: false });
const middle = viewOf({ fromM: 20, toM: 40, first: false, last: false });

describe('match lines', () => {
  it('stand where a page ends within the well, and say where it goes on', () => {
    const drawn = drawMatchLines(kit, upper, 1);
    expect(wordsOf(drawn)).toEqual(['match line 20.00 m, goes on on sheet 2']);
    expect(pathsOf(drawn).map((one) => pointsOf(one)[0]![1])).toEqual([yAt(upper.axis, 20)]);
  });

  it('stand at both ends of a page in the middle', () => {
    expect(wordsOf(drawMatchLines(kit, middle, 2))).toEqual([
      'match line 20.00 m, goes on from sheet 1',
      'match line 40.00 m, goes on on sheet 3',
    ]);
  });

  it('go across the whole drawing', () => {
    const [line] = pathsOf(drawMatchLines(kit, upper, 1));
    expect(pointsOf(line!).map(([x]) => x)).toEqual([20, 200]);
  });

  it('are not on a sheet of one page', () => {
    expect(pathsOf(drawMatchLines(kit, viewOf(), 1))).toEqual([]);
  });
});
