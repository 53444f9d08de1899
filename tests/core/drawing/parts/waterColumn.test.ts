import { describe, expect, it } from 'vitest';
import { drawWaterColumn } from '../../../../core/drawing/parts/waterColumn.ts';
import { yAt } from '../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, stratum, textsOf, viewOf } from '../sample.ts';

const view = viewOf();
const strike = (depthM: number, riseM?: number) => ({
  depthM,
  ...(riseM !== undefined && { riseM }),
  path: `strikes[${depthM}]`,
});

const draw = (ground: Partial<Parameters<typeof drawWaterColumn>[1]>, on: typeof view) =>
  drawWaterColumn(kit, { strata: [], samples: [], strikes: [], ...ground }, on);

const filled = (drawn: ReturnType<typeof drawWaterColumn>) =>
  pathsOf(drawn).filter(({ fill }) => fill);

describe('strikes', () => {
  it('point at the ground at their depth', () => {
    const [head] = filled(draw({ strikes: [strike(12.5)] }, view));
    const [tip, ...others] = pointsOf(head!);
    expect(tip![1]).toBe(yAt(view.axis, 12.5));
    expect(tip![0]).toBeGreaterThan(Math.max(...others.map(([x]) => x)));
  });

  it('are numbered as the record counts them', () => {
    const numbers = textsOf(draw({ strikes: [strike(20), strike(8)] }, view));
    expect(numbers.map(({ text, source }) => [text, source])).toEqual([
      ['1', 'strikes[20]'],
      ['2', 'strikes[8]'],
    ]);
  });

  it('that are near each other keep their numbers apart and in the order of depth', () => {
    const near = [strike(12), strike(12.1), strike(12.2)];
    const ys = textsOf(draw({ strikes: near }, view)).map(({ y }) => y);
    expect(ys[1]! - ys[0]!).toBeGreaterThan(2.2);
    expect(ys[2]! - ys[1]!).toBeGreaterThan(2.2);
  });

  it('show the rise to the level that the water came to', () => {
    const [, rise] = filled(draw({ strikes: [strike(12, 4)] }, view));
    expect(pointsOf(rise!)[0]![1]).toBe(yAt(view.axis, 4));
  });

  it('whose water rose beyond the page keep a line without a head there', () => {
    const lower = viewOf({ fromM: 10, toM: 40, first: false });
    const drawn = draw({ strikes: [strike(12, 4)] }, lower);
    expect(filled(drawn)).toHaveLength(1);
    const tops = pathsOf(drawn).flatMap((one) => pointsOf(one).map(([, y]) => y));
    expect(Math.min(...tops)).toBe(yAt(lower.axis, 10));
  });
});

describe('samples', () => {
  it('stand at the middle of their interval, on one page', () => {
    const sampled = stratum(0, 20, { sampled: true });
    const upper = viewOf({ toM: 10, last: false });
    const lower = viewOf({ fromM: 10, first: false });
    const [sign] = filled(draw({ strata: [sampled] }, upper));
    const ys = pointsOf(sign!).map(([, y]) => y);
    expect((Math.min(...ys) + Math.max(...ys)) / 2).toBeCloseTo(yAt(upper.axis, 10), 9);
    expect(filled(draw({ strata: [sampled] }, lower))).toEqual([]);
  });

  it('are not drawn where none was taken', () => {
    expect(filled(draw({ strata: [stratum(0, 20)] }, view))).toEqual([]);
  });

  const listed = (...ranges: [number, number][]) =>
    ranges.map(([fromM, toM], at) => ({ fromM, toM, path: `samples[${at}]` }));
  const heightOf = (sign: ReturnType<typeof filled>[number]) => {
    const ys = pointsOf(sign).map(([, y]) => y);
    return {
      middle: (Math.min(...ys) + Math.max(...ys)) / 2,
      high: Math.max(...ys) - Math.min(...ys),
    };
  };

  it('that are listed stand at their own depth, each with its place in the record', () => {
    const signs = filled(draw({ samples: listed([3, 4], [8, 8]) }, view));
    expect(signs.map((sign) => [heightOf(sign).middle, sign.source])).toEqual([
      [expect.closeTo(yAt(view.axis, 3.5), 9), 'samples[0]'],
      [expect.closeTo(yAt(view.axis, 8), 9), 'samples[1]'],
    ]);
  });

  it('that are listed take the place of the sign of the whole interval, and of no other', () => {
    const strata = [stratum(0, 10, { sampled: true }), stratum(10, 20, { sampled: true })];
    const signs = filled(draw({ strata, samples: listed([3, 4]) }, view));
    expect(signs.map((sign) => heightOf(sign).middle)).toEqual([
      expect.closeTo(yAt(view.axis, 3.5), 9),
      expect.closeTo(yAt(view.axis, 15), 9),
    ]);
  });

  it('that follow each other closely are small enough to be told apart', () => {
    const close = viewOf({ toM: 2000 });
    const signs = filled(draw({ samples: listed([10, 11], [11, 12], [12, 13]) }, close));
    const [first, second] = signs.map(heightOf);
    const pitch = second!.middle - first!.middle;
    expect(first!.high).toBeLessThan(Math.max(pitch, 0.61));
    expect(first!.high).toBeLessThan(
      heightOf(filled(draw({ samples: listed([3, 4]) }, view))[0]!).high,
    );
  });
});
