import { describe, expect, it } from 'vitest';
import { drawSurface } from '../../../../../core/drawing/parts/section/surface.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { pathsOf, pointsOf, regionsOf, viewOf } from '../../sample.ts';
import { built, edgesOf } from './well.ts';

const view = viewOf({ fromM: -0.6 });
const pad = { padLength: 2, padThickness: 0.2 };

describe('the surface', () => {
  it('is a wide line on ground level, outside the well', () => {
    const lines = pathsOf(drawSurface(built.strings, undefined, 250, view)).filter(
      ({ stroke }) => stroke!.width === 0.5,
    );
    const [left, right] = edgesOf(view, 250);
    expect(lines).toHaveLength(2);
    for (const [start, end] of lines.map(pointsOf)) {
      expect([start![1], end![1]]).toEqual([yAt(view.axis, 0), yAt(view.axis, 0)]);
      for (const [x] of [start!, end!]) expect(x <= left + 1e-9 || x >= right - 1e-9).toBe(true);
    }
  });

  it('bears a pad as thick as it is, on both sides of the casing', () => {
    const slabs = regionsOf(drawSurface(built.strings, pad, 250, view)).map(pointsOf);
    expect(slabs).toHaveLength(2);
    for (const slab of slabs) {
      const ys = slab.map(([, y]) => y);
      expect(Math.max(...ys)).toBeCloseTo(yAt(view.axis, 0), 9);
      expect(Math.min(...ys)).toBeCloseTo(yAt(view.axis, -0.2), 9);
    }
  });

  it('has no pad of which nobody measured the thickness, and is not on a lower page', () => {
    expect(regionsOf(drawSurface(built.strings, { padLength: 2 }, 250, view))).toEqual([]);
    const lower = viewOf({ fromM: 10, first: false });
    expect(pathsOf(drawSurface(built.strings, pad, 250, lower))).toEqual([]);
  });
});
