import { describe, expect, it } from 'vitest';
import { drawPump } from '../../../../../core/drawing/parts/section/pump.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { pathsOf, pointsOf, viewOf } from '../../sample.ts';
import { built, edgesOf } from './well.ts';

const view = viewOf({ fromM: -0.6 });
const pump = built.pump!;
const drawn = pathsOf(drawPump(pump, built.strings, view));

describe('the pump', () => {
  it('has its intake at its depth, an arrow that points up into it', () => {
    const [tip, ...others] = pointsOf(drawn.find(({ source }) => source === 'pump.intake')!);
    expect(tip![1]).toBe(yAt(view.axis, 12));
    for (const [, y] of others) expect(y).toBeGreaterThan(tip![1]);
  });

  it('has a body from the top of its cylinder to the intake, as wide as it is', () => {
    const body = pointsOf(drawn.find(({ fill }) => fill === '#ffffff')!);
    const [left, right] = edgesOf(view, 70);
    expect(body[0]).toEqual([expect.closeTo(left, 9), expect.closeTo(yAt(view.axis, 11), 9)]);
    expect(body[2]).toEqual([expect.closeTo(right, 9), expect.closeTo(yAt(view.axis, 12), 9)]);
  });

  it('hangs on a riser to scale from the top of the casing', () => {
    const risers = drawn.filter(({ fill }) => !fill).map(pointsOf);
    expect(risers.map(([start]) => start![0])).toEqual(
      edgesOf(view, 40).map((x) => expect.closeTo(x, 9)),
    );
    for (const [start, end] of risers)
      expect([start![1], end![1]]).toEqual([
        expect.closeTo(yAt(view.axis, built.strings[0]!.topM), 9),
        yAt(view.axis, 11),
      ]);
  });

  it('hangs on a centre line where nobody recorded the riser', () => {
    const [line] = pathsOf(drawPump({ intakeM: 12, path: 'pump' }, built.strings, view));
    expect(line!.stroke!.dash).toBeDefined();
    expect(new Set(pointsOf(line!).map(([x]) => x)).size).toBe(1);
  });

  it('is not drawn without a depth', () => {
    expect(pathsOf(drawPump({ path: 'pump' }, built.strings, view))).toEqual([]);
    expect(pathsOf(drawPump(undefined, built.strings, view))).toEqual([]);
  });
});
