import { describe, expect, it } from 'vitest';
import { clipChain, isInside } from '../../../../core/paint/dxf/clip.ts';
import { flatten } from '../../../../core/paint/dxf/flatten.ts';
import { hatchMarks } from '../../../../core/paint/dxf/hatchLines.ts';
import { box, dotted } from '../sample.ts';

const square = flatten(box(0, 0, 10, 10));
const frame = [...square, ...flatten(box(4, 4, 2, 2))];

describe('an outline as straight strokes', () => {
  it('keeps its corners and says whether it is closed', () => {
    expect(square).toEqual([
      {
        closed: true,
        points: [
          [0, 0],
          [10, 0],
          [10, 10],
          [0, 10],
        ],
      },
    ]);
    expect(
      flatten([
        ['M', 1, 1],
        ['L', 2, 2],
      ])[0]!.closed,
    ).toBe(false);
  });

  it('lies no farther from a curve than can be seen', () => {
    // A quarter of a circle by its usual Bézier curve, whose own error is 0.03 % of the radius.
    const k = 0.5522847498;
    const [quarter] = flatten([
      ['M', 50, 0],
      ['C', 50, 50 * k, 50 * k, 50, 0, 50],
    ]);
    for (const [x, y] of quarter!.points) expect(Math.hypot(x, y)).toBeCloseTo(50, 1);
    const between = quarter!.points.slice(1).map(([x, y], at) => {
      const [px, py] = quarter!.points[at]!;
      return Math.hypot((x + px) / 2, (y + py) / 2);
    });
    expect(Math.min(...between)).toBeGreaterThan(50 - 0.02 - 0.015);
  });
});

describe('an area', () => {
  it('is what lies inside an odd number of its outlines', () => {
    expect(isInside([1, 1], frame)).toBe(true);
    expect(isInside([5, 5], frame)).toBe(false);
    expect(isInside([11, 5], frame)).toBe(false);
  });

  it('cuts what crosses its outline, and leaves its hole out', () => {
    const [across] = flatten([
      ['M', -5, 5],
      ['L', 15, 5],
    ]);
    const xs = clipChain(across!, frame).map(({ points }) => points.map(([x]) => x));
    expect(xs).toEqual([
      [0, 4],
      [6, 10],
    ]);
    const [beside] = flatten([
      ['M', -5, 20],
      ['L', 15, 20],
    ]);
    expect(clipChain(beside!, frame)).toEqual([]);
  });
});

describe('a hatch as strokes', () => {
  it('has its marks where every painter lays them: tiles from the corner of the page', () => {
    // A dot of 1 mm at (1, 2) of each tile of 7 by 9 mm.
    const marks = hatchMarks(dotted, flatten(box(7, 9, 14, 9)));
    expect(marks.map(({ chains }) => chains[0]!.points[0])).toEqual([
      [8, 11],
      [15, 11],
    ]);
    expect(marks.every(({ whole }) => whole)).toBe(true);
  });

  it('is cut at the outline', () => {
    const marks = hatchMarks(dotted, flatten(box(8.5, 9, 20, 9)));
    const points = marks.flatMap(({ chains }) => chains.flatMap((chain) => chain.points));
    expect(Math.min(...points.map(([x]) => x))).toBe(8.5);
    expect(marks[0]!.whole).toBe(false);
  });
});
