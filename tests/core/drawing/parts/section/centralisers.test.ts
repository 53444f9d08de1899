import { expect, it } from 'vitest';
import { drawCentralisers } from '../../../../../core/drawing/parts/section/centralisers.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { pathsOf, pointsOf, viewOf } from '../../sample.ts';
import { built, edgesOf } from './well.ts';

const [string] = built.strings;
const bows = (view = viewOf()) =>
  pathsOf(drawCentralisers(string!, built.strings, built.bore, view)).map(pointsOf);

it('a centraliser stands at its depth, from the pipe to the wall and not beyond', () => {
  const view = viewOf();
  const [depthM] = string!.pieces.flatMap(({ centralisersM }) => centralisersM);
  const [left, right] = edgesOf(view, 160);
  expect(bows()).toHaveLength(2);
  for (const bow of bows()) {
    const ys = bow.map(([, y]) => y);
    expect((Math.min(...ys) + Math.max(...ys)) / 2).toBeCloseTo(yAt(view.axis, depthM!), 9);
    for (const [x] of bow) {
      expect(x).toBeGreaterThanOrEqual(left);
      expect(x).toBeLessThanOrEqual(right);
    }
  }
});

it('a centraliser stands on the page that shows its depth', () => {
  expect(bows(viewOf({ fromM: 15, first: false }))).toEqual([]);
});

it('a centraliser is white within, over the fill that it stands in', () => {
  const drawn = pathsOf(drawCentralisers(string!, built.strings, built.bore, viewOf()));
  expect(drawn.length).toBeGreaterThan(0);
  for (const bow of drawn) expect(bow.fill).toBe('#ffffff');
});
