import { describe, expect, it } from 'vitest';
import { drawScaleBars } from '../../../../core/drawing/parts/scaleBars.ts';
import { depthScales, widthScales } from '../../../../core/drawing/scale.ts';
import { groupsNamed } from '../../../sheets/placed.ts';
import { kit, pathsOf, pointsOf, textsOf, wordsOf } from '../sample.ts';

const bars = (depth: number, width?: number) =>
  groupsNamed([drawScaleBars(kit, depth, width, 20, 200)], 'scaleBar');

function lengthOf(bar: ReturnType<typeof bars>[number]): number {
  const xs = pathsOf(bar).flatMap((one) => pointsOf(one).map(([x]) => x));
  return Math.max(...xs) - Math.min(...xs);
}

/** The figure at the end of a bar, in its unit. */
function valueOf(bar: ReturnType<typeof bars>[number]): [number, string] {
  const [, figure, unit] = wordsOf(bar)
    .map((one) => /^([\d.]+) (m|mm)$/.exec(one))
    .find((one) => one !== null)!;
  return [Number(figure), unit!];
}

describe('scale bars', () => {
  it('have a check line of exactly 100 mm that says so', () => {
    const [check] = groupsNamed([drawScaleBars(kit, 100, 5, 20, 200)], 'checkLine');
    const [line, ...ticks] = pathsOf(check!).map(pointsOf);
    expect(line![1]![0] - line![0]![0]).toBe(100);
    expect(ticks.map(([start]) => start![0] - line![0]![0])).toEqual([0, 50, 100]);
    expect(wordsOf(check!)).toEqual([expect.stringMatching(/^100 mm: .*do not scale/)]);
  });

  it.each(depthScales)('are as long at 1:%d as their metres are', (scale) => {
    const [bar] = bars(scale);
    const [metres, unit] = valueOf(bar!);
    expect(unit).toBe('m');
    expect(lengthOf(bar!)).toBeCloseTo((metres * 1000) / scale, 9);
  });

  it.each(widthScales)('are as long at 1:%d as their millimetres are', (scale) => {
    const bar = bars(100, scale)[1]!;
    const [millimetres, unit] = valueOf(bar);
    expect(unit).toBe('mm');
    expect(lengthOf(bar)).toBeCloseTo(millimetres / scale, 9);
  });

  it('are long enough to measure by, and name their half', () => {
    for (const scale of depthScales) {
      const [bar] = bars(scale);
      expect(lengthOf(bar!)).toBeGreaterThanOrEqual(8);
      expect(lengthOf(bar!)).toBeLessThanOrEqual(20 + 1e-9);
      const half = textsOf(bar!)[1]!;
      expect(Number(half.text)).toBeCloseTo(valueOf(bar!)[0] / 2, 9);
    }
  });

  it('have none for diameters where none is known', () => {
    expect(bars(100)).toHaveLength(1);
  });
});
