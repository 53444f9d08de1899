import { describe, expect, it } from 'vitest';
import { drawDepthRuler } from '../../../../core/drawing/parts/depthRuler.ts';
import { yAt } from '../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, textsOf, viewOf, wordsOf } from '../sample.ts';

const ticksOf = (view = viewOf()) => pathsOf(drawDepthRuler(kit, view)).map(pointsOf);

describe('the depth ruler', () => {
  it.each([
    [20, 1, ['0', '0.5', '1'], 11],
    [50, 3, ['0', '1', '2', '3'], 16],
    [100, 3, ['0', '1', '2', '3'], 7],
    [200, 12, ['0', '5', '10'], 13],
    [500, 25, ['0', '10', '20'], 26],
    [1000, 45, ['0', '20', '40'], 10],
  ])('has at 1:%d over %d m the figures %j and %d ticks', (scale, toM, figures, ticks) => {
    const view = viewOf({ scale, toM });
    expect(wordsOf(drawDepthRuler(kit, view))).toEqual(figures);
    expect(ticksOf(view)).toHaveLength(ticks);
  });

  it('stands its figures in the middle of long ticks, at their depth', () => {
    const view = viewOf();
    for (const { text, y } of textsOf(drawDepthRuler(kit, view))) {
      const at = yAt(view.axis, Number(text));
      expect(y - 0.9).toBeCloseTo(at, 9);
      const tick = ticksOf(view).find(([start]) => Math.abs(start![1] - at) < 1e-9)!;
      expect(tick[1]![0] - tick[0]![0]).toBeCloseTo(3, 9);
    }
  });

  it('has no tick in a break, no figure near it, and a figure in each stretch', () => {
    const leftOut = [
      { fromM: 6, toM: 11 },
      { fromM: 14, toM: 22 },
    ];
    expect(wordsOf(drawDepthRuler(kit, viewOf({ leftOut })))).toEqual(['0', '5', '12', '25', '30']);
    const depths = ticksOf(viewOf({ leftOut })).length;
    expect(depths).toBe(7 + 4 + 9);
  });

  it('begins at ground level, not above it', () => {
    const view = viewOf({ fromM: -0.6 });
    expect(Math.min(...ticksOf(view).map(([start]) => start![1]))).toBeCloseTo(
      yAt(view.axis, 0),
      9,
    );
    expect(wordsOf(drawDepthRuler(kit, view))[0]).toBe('0');
  });

  it('leaves the figures of a match line to its words', () => {
    const upper = viewOf({ toM: 20, last: false });
    const lower = viewOf({ fromM: 20, toM: 40, first: false });
    expect(wordsOf(drawDepthRuler(kit, upper))).toEqual(['0', '5', '10', '15']);
    expect(wordsOf(drawDepthRuler(kit, lower))).toEqual(['25', '30', '35', '40']);
  });

  it('writes the decimal mark of its language', () => {
    const words = { ...kit.words, decimalMark: ',' as const };
    expect(wordsOf(drawDepthRuler({ ...kit, words }, viewOf({ scale: 20, toM: 1 })))).toContain(
      '0,5',
    );
  });
});
