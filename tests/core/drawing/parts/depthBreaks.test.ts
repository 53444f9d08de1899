import { describe, expect, it } from 'vitest';
import { drawDepthBreaks } from '../../../../core/drawing/parts/depthBreaks.ts';
import { yAt } from '../../../../core/drawing/scale.ts';
import { frenchKit, kit, pathsOf, pointsOf, textsOf, viewOf, wordsOf } from '../sample.ts';

const view = viewOf({ leftOut: [{ fromM: 8, toM: 21 }] });
const bands = pathsOf(drawDepthBreaks(kit, view));

describe('the marks of a broken axis', () => {
  it('are none where the axis is whole', () => {
    expect(pathsOf(drawDepthBreaks(kit, viewOf()))).toEqual([]);
  });

  it('reach from the upper to the lower end of what is left out', () => {
    const ys = bands.flatMap((band) => pointsOf(band).map(([, y]) => y));
    expect(Math.min(...ys)).toBeCloseTo(yAt(view.axis, 8), 9);
    expect(Math.max(...ys)).toBeCloseTo(yAt(view.axis, 21), 9);
  });

  it('cross all columns that are to scale and none of words', () => {
    const xs = bands.flatMap((band) => pointsOf(band).map(([x]) => x));
    const { depth, ground, description, casing, section, fill } = view.columns;
    const over = ({ x, width }: { x: number; width: number }) =>
      xs.some((one) => one > x + 0.01 && one < x + width - 0.01);
    for (const span of [depth, ground, section]) expect(over(span)).toBe(true);
    for (const span of [description, casing, fill]) expect(over(span)).toBe(false);
  });

  it('are a clear band, so that nothing shows through the words in it', () => {
    expect(bands.filter(({ fill }) => fill === '#ffffff').length).toBeGreaterThan(1);
  });

  it('say in words which metres are not drawn, clear of the zigzags', () => {
    expect(wordsOf(drawDepthBreaks(kit, view))).toContain('8–21 m not drawn');
    expect(wordsOf(drawDepthBreaks(frenchKit, view))).toContain('8–21 m non représentés');
    const [top, foot] = [yAt(view.axis, 8), yAt(view.axis, 21)];
    for (const { y } of textsOf(drawDepthBreaks(kit, view))) {
      expect(y - 1.8).toBeGreaterThan(top + 1.6);
      expect(y).toBeLessThan(foot - 1.6);
    }
  });
});
