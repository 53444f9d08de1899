import { describe, expect, it } from 'vitest';
import { drawStrikes } from '../../../../../core/drawing/parts/log/strikes.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, textsOf, viewOf } from '../../sample.ts';

const view = viewOf();
const strike = (depthM: number, riseM?: number) => ({
  depthM,
  ...(riseM !== undefined && { riseM }),
  path: `strikes[${depthM}]`,
});

const filled = (drawn: ReturnType<typeof drawStrikes>) => pathsOf(drawn).filter(({ fill }) => fill);

describe('strikes', () => {
  it('point at the ground at their depth', () => {
    const [head] = filled(drawStrikes(kit, [strike(12.5)], view));
    const [tip, ...others] = pointsOf(head!);
    expect(tip![1]).toBe(yAt(view.axis, 12.5));
    expect(tip![0]).toBeGreaterThan(Math.max(...others.map(([x]) => x)));
  });

  it('are numbered as the record counts them', () => {
    const numbers = textsOf(drawStrikes(kit, [strike(20), strike(8)], view));
    expect(numbers.map(({ text, source }) => [text, source])).toEqual([
      ['1', 'strikes[20]'],
      ['2', 'strikes[8]'],
    ]);
  });

  it('that are near each other keep their numbers apart and in the order of depth', () => {
    const near = [strike(12), strike(12.1), strike(12.2)];
    const ys = textsOf(drawStrikes(kit, near, view)).map(({ y }) => y);
    expect(ys[1]! - ys[0]!).toBeGreaterThan(2.2);
    expect(ys[2]! - ys[1]!).toBeGreaterThan(2.2);
  });

  it('show the rise to the level that the water came to', () => {
    const [, rise] = filled(drawStrikes(kit, [strike(12, 4)], view));
    expect(pointsOf(rise!)[0]![1]).toBe(yAt(view.axis, 4));
  });

  it('whose water rose beyond the page keep a line without a head there', () => {
    const lower = viewOf({ fromM: 10, toM: 40, first: false });
    const drawn = drawStrikes(kit, [strike(12, 4)], lower);
    expect(filled(drawn)).toHaveLength(1);
    const tops = pathsOf(drawn).flatMap((one) => pointsOf(one).map(([, y]) => y));
    expect(Math.min(...tops)).toBe(yAt(lower.axis, 10));
  });
});
