import { describe, expect, it } from 'vitest';
import {
  drawWaterLevels,
  levelSign,
  shownLevels,
} from '../../../../../core/drawing/parts/section/waterLevels.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { groupsNamed } from '../../../../sheets/placed.ts';
import { pathsOf, pointsOf, viewOf } from '../../sample.ts';
import { built, edgesOf } from './well.ts';

const view = viewOf();

describe('water levels', () => {
  it('that are shown are the latest at rest and the deepest while pumping', () => {
    expect(shownLevels(built.levels).map(({ depthM, state }) => [depthM, state])).toEqual([
      [4.9, 'static'],
      [9.1, 'pumping'],
    ]);
    expect(shownLevels([])).toEqual([]);
  });

  it('have a triangle whose point is on the level, open at rest and filled while pumping', () => {
    const groups = groupsNamed([drawWaterLevels(built.levels, built.strings, view)], 'level');
    const triangles = groups.map((one) => pathsOf(one).find(({ fill }) => fill)!);
    expect(triangles.map((one) => pointsOf(one)[0]![1])).toEqual(
      [4.9, 9.1].map((depth) => yAt(view.axis, depth)),
    );
    expect(triangles.map(({ fill }) => fill)).toEqual(['#ffffff', '#000000']);
  });

  it('reach across the inside of the casing', () => {
    const [rest] = groupsNamed([drawWaterLevels(built.levels, built.strings, view)], 'level');
    const [line] = pathsOf(rest!);
    const [left, right] = edgesOf(view, 100);
    expect(pointsOf(line!).map(([x]) => x)).toEqual([
      expect.closeTo(left, 9),
      expect.closeTo(right, 9),
    ]);
  });

  it('stand on the page that shows their depth', () => {
    const lower = viewOf({ fromM: 6, first: false });
    const groups = groupsNamed([drawWaterLevels(built.levels, built.strings, lower)], 'level');
    expect(groups.map(({ source }) => source)).toEqual(['levels[3]']);
  });
});

it('the sign of a level stands over the level but for its two short lines', () => {
  const [triangle, ...lines] = levelSign([10, 50], false).map((one) =>
    one.kind === 'path' ? pointsOf(one) : [],
  );
  expect(Math.max(...triangle!.map(([, y]) => y))).toBe(50);
  for (const line of lines) expect(Math.min(...line.map(([, y]) => y))).toBeGreaterThan(50);
});
