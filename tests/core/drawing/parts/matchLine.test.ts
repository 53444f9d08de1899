import { describe, expect, it } from 'vitest';
import { drawMatchLines } from '../../../../core/drawing/parts/matchLine.ts';
import { yAt } from '../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, textsOf, viewOf, wordsOf } from '../sample.ts';

const upper = viewOf({ toM: 20, last: false });
const middle = viewOf({ fromM: 20, toM: 40, first: false, last: false });

const linesOf = (drawn: ReturnType<typeof drawMatchLines>) =>
  pathsOf(drawn).filter(({ stroke }) => stroke);

describe('match lines', () => {
  it('stand where a page ends within the well, and say where it goes on', () => {
    const drawn = drawMatchLines(kit, upper, 1);
    expect(wordsOf(drawn)).toEqual(['match line 20.00 m, goes on on sheet 2']);
    expect(linesOf(drawn).map((one) => pointsOf(one)[0]![1])).toEqual([yAt(upper.axis, 20)]);
  });

  it('stand at both ends of a page in the middle', () => {
    expect(wordsOf(drawMatchLines(kit, middle, 2))).toEqual([
      'match line 20.00 m, goes on from sheet 1',
      'match line 40.00 m, goes on on sheet 3',
    ]);
  });

  it('go across the whole drawing', () => {
    const [line] = linesOf(drawMatchLines(kit, upper, 1));
    expect(pointsOf(line!).map(([x]) => x)).toEqual([20, 200]);
  });

  it('have a clear ground under their words, so that no rule runs through them', () => {
    const clear = pathsOf(drawMatchLines(kit, upper, 1)).find(({ fill }) => fill);
    const [from, , to] = pointsOf(clear!);
    const [text] = textsOf(drawMatchLines(kit, upper, 1));
    expect(clear!.fill).toBe('#ffffff');
    expect(from![0]).toBeLessThan(text!.x);
    expect(to![0]).toBeGreaterThan(text!.x + text!.width);
  });

  it('are not on a sheet of one page', () => {
    expect(pathsOf(drawMatchLines(kit, viewOf(), 1))).toEqual([]);
  });
});
