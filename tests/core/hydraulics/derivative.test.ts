import { describe, expect, it } from 'vitest';
import { bourdetDerivative } from '../../../core/hydraulics/derivative.ts';
import { pumpingAxis, recoveryAxis } from '../../../core/hydraulics/methods/straightLine.ts';
import { drawdowns } from './published.ts';
import { logMinutes } from './synthetic.ts';

const minutes = logMinutes(1000, 31);

describe('the derivative', () => {
  it('of a straight line is its slope over ln t', () => {
    const on = pumpingAxis(
      drawdowns(
        minutes.map((at) => [at, 1 + 0.2 * Math.log(at)]),
        48,
      ),
    )!;
    const { points } = bourdetDerivative(on, 0.5);
    for (const { derivativeM } of points) expect(derivativeM).toBeCloseTo(0.2, 9);
  });

  it('of a parabola is exact where neighbours lie evenly apart', () => {
    const on = pumpingAxis(
      drawdowns(
        minutes.map((at) => [at, Math.log(at) ** 2]),
        48,
      ),
    )!;
    for (const { minutes: at, derivativeM } of bourdetDerivative(on, 0.5).points)
      expect(derivativeM).toBeCloseTo(2 * Math.log(at), 6);
  });

  it('is not told where a neighbour is too near, at both ends', () => {
    const on = pumpingAxis(
      drawdowns(
        minutes.map((at) => [at, Math.log(at)]),
        48,
      ),
    )!;
    const { points, smoothing } = bourdetDerivative(on, 0.5);
    expect(smoothing).toBe(0.5);
    expect(points[0]!.minutes).toBeCloseTo(minutes[3]!, 9);
    expect(points.at(-1)!.minutes).toBeCloseTo(minutes[27]!, 9);
  });

  it('of a recovery is positive too', () => {
    const data = drawdowns(
      minutes.map((at) => [at, 0.2 * Math.log((500 + at) / at)]),
      48,
    );
    const on = recoveryAxis({ ...data, pumpedMin: 500 })!;
    for (const { derivativeM } of bourdetDerivative(on, 0.3).points)
      expect(derivativeM).toBeCloseTo(0.2, 9);
  });
});
