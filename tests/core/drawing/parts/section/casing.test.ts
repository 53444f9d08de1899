import { describe, expect, it } from 'vitest';
import { drawCasing, wallIsFilled } from '../../../../../core/drawing/parts/section/casing.ts';
import { drawSlots } from '../../../../../core/drawing/parts/section/slots.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { groupsNamed } from '../../../../sheets/placed.ts';
import { resolve } from '../../../model/well.ts';
import { pathsOf, pointsOf, viewOf } from '../../sample.ts';
import { built, edgesOf } from './well.ts';

const view = viewOf({ fromM: -0.6 });
const [string] = built.strings;
const drawn = drawCasing(string!, view);
const close = (values: readonly number[]) => values.map((one) => expect.closeTo(one, 9) as number);
const wallsOf = (kind: string, item = drawn) =>
  groupsNamed([item], kind)
    .flatMap((one) => pathsOf(one))
    .filter(({ fill }) => fill)
    .map(pointsOf);

describe('a string', () => {
  it('has walls that reach from the top of a pipe to its foot, at its outside', () => {
    for (const kind of ['plain', 'screen']) {
      const piece = string!.pieces.find((one) => one.kind === kind)!;
      const walls = wallsOf(kind);
      expect(walls).toHaveLength(2);
      expect(walls.map(([corner]) => corner![0])).toEqual(close(edgesOf(view, 110)));
      for (const wall of walls)
        expect([wall[0]![1], wall[1]![1]]).toEqual(
          close([yAt(view.axis, piece.topM), yAt(view.axis, piece.bottomM)]),
        );
    }
  });

  it('has walls as thick as the scale makes them, where that can be seen', () => {
    const large = viewOf({ widthScale: 2 });
    const wide = drawCasing(string!, large);
    const [wall] = wallsOf('plain', wide);
    expect(Math.abs(wall![2]![0] - wall![1]![0])).toBeCloseTo(5 / 2, 9);
    expect(wallIsFilled(large, string!.pieces[0]!)).toBe(false);
    expect(wallIsFilled(view, string!.pieces[0]!)).toBe(true);
  });

  it('narrows at a reducer', () => {
    const reduced = resolve({
      strings: [
        {
          components: [
            { kind: 'plain', outside: 110, wall: 5, length: 5 },
            { kind: 'reducer', outside: 110, upperOutside: 160, wall: 5, length: 0.5 },
            { kind: 'plain', outside: 160, wall: 5, length: 5 },
          ],
          set: { by: 'bottom', depth: 10.5 },
        },
      ],
    });
    const [left] = wallsOf('reducer', drawCasing(reduced.strings[0]!, view));
    expect(left!.slice(0, 2).map(([x]) => x)).toEqual(
      close([edgesOf(view, 160)[0], edgesOf(view, 110)[0]]),
    );
  });

  it('is closed by a cap at its foot', () => {
    const [cap] = wallsOf('cap');
    const ys = cap!.map(([, y]) => y);
    expect(Math.max(...ys)).toBeCloseTo(yAt(view.axis, 20), 9);
    expect(cap!.slice(0, 2).map(([x]) => x)).toEqual(close(edgesOf(view, 110)));
  });

  it('is dashed where nobody recorded a diameter', () => {
    const { strings } = resolve({
      strings: [{ components: [{ kind: 'plain', length: 9 }], set: { by: 'bottom', depth: 9 } }],
    });
    const paths = pathsOf(drawCasing(strings[0]!, view));
    expect(paths.every(({ stroke }) => stroke?.dash !== undefined)).toBe(true);
  });
});

describe('slots', () => {
  const screen = string!.pieces.find(({ kind }) => kind === 'screen')!;
  const top = yAt(view.axis, screen.topM);
  const foot = yAt(view.axis, screen.bottomM);
  const heights = (at = view) =>
    pathsOf(drawSlots(at, screen, true)).flatMap((one) => pointsOf(one).map(([, y]) => y));

  it('stand on the screen only', () => {
    expect(heights().length).toBeGreaterThan(20);
    expect(Math.min(...heights())).toBeGreaterThan(top);
    expect(Math.max(...heights())).toBeLessThan(foot);
    expect(groupsNamed([drawn], 'plain').flatMap((one) => pathsOf(one)).length).toBeLessThan(6);
  });

  it('stand evenly, and as far from both ends', () => {
    const ys = [...new Set(heights())].sort((a, b) => a - b);
    const steps = ys.slice(1).map((y, at) => y - ys[at]!);
    for (const step of steps) expect(step).toBeCloseTo(steps[0]!, 6);
    expect(ys[0]! - top).toBeCloseTo(foot - ys.at(-1)!, 6);
  });

  it('stay within the part of the screen that a page shows', () => {
    const lower = viewOf({ fromM: 17, toM: 20, first: false });
    expect(Math.min(...heights(lower))).toBeGreaterThan(lower.axis.top);
    expect(heights(viewOf({ fromM: 0, toM: 10, last: false }))).toEqual([]);
  });

  it('lie within the outside of the pipe', () => {
    const [left, right] = edgesOf(view, 110);
    for (const path of pathsOf(drawSlots(view, screen, true)))
      for (const [x] of pointsOf(path)) {
        expect(x).toBeGreaterThanOrEqual(left - 1e-9);
        expect(x).toBeLessThanOrEqual(right + 1e-9);
      }
  });
});
