import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/base/random.ts';
import { cooperJacob, theisRecovery } from '../../../core/hydraulics/methods/straightLine.ts';
import { theis } from '../../../core/hydraulics/methods/theis.ts';
import { edenHazel, fitSteps } from '../../../core/hydraulics/methods/edenHazel.ts';
import { stoppedAt } from '../../../core/hydraulics/ratesOverTime.ts';
import type { MethodResult, TestReading } from '../../../core/hydraulics/results.ts';
import type { QuantityId } from '../../../core/hydraulics/codes.ts';
import { drawdowns } from './published.ts';
import { drawdownOf, logMinutes, normal, type Ideal } from './synthetic.ts';
import { estimateOf } from './values.ts';

const trials = 500;
/** 95 % of 500, less and more three standard deviations of such a count. */
const [least, most] = [0.921, 0.979];

/** Share of the trials whose interval holds the truth. */
function covered(truth: number, id: QuantityId, trial: (noise: () => number) => MethodResult) {
  const noise = normal(seededRandom(20260101));
  let inside = 0;
  for (let n = 0; n < trials; n++) {
    const { interval } = estimateOf(trial(noise), id);
    if (interval!.lowest <= truth && truth <= (interval!.highest ?? Infinity)) inside++;
  }
  return inside / trials;
}

const well: Ideal = { T: 50, S: 0.001, r: 0.075 };
const observed: Ideal = { T: 50, S: 0.001, r: 15 };
const rates = [{ fromMin: 0, rateM3d: 48 }];
const minutes = logMinutes(360, 25);
/** Readings err by about a centimetre. */
const errorM = 0.01;

const noisy = (ideal: Ideal, noise: () => number) =>
  drawdowns(
    minutes.map((at) => [at, drawdownOf(ideal, rates, at) + errorM * noise()]),
    48,
  );

describe('the interval of 95 % holds the true transmissivity about so often', () => {
  it('by the straight line in a window', () => {
    const share = covered(well.T, 'transmissivity', (noise) =>
      cooperJacob(noisy(well, noise), { window: { fromMin: 0, toMin: 400 } })!,
    );
    expect(share).toBeGreaterThan(least);
    expect(share).toBeLessThan(most);
  });

  it('by the straight line where the program chooses the window, little less often', () => {
    const share = covered(well.T, 'transmissivity', (noise) =>
      cooperJacob(noisy(well, noise), {})!,
    );
    expect(share).toBeGreaterThan(0.88);
    expect(share).toBeLessThan(most);
  });

  it('by the recovery in a window', () => {
    const share = covered(well.T, 'transmissivity', (noise) => {
      const residual = minutes.map(
        (at) => [at, drawdownOf(well, stoppedAt(rates, 360), 360 + at) + errorM * noise()] as const,
      );
      const data = { ...drawdowns(residual, 48), pumpedMin: 360 };
      return theisRecovery(data, { window: { fromMin: 0, toMin: 400 } })!;
    });
    expect(share).toBeGreaterThan(least);
    expect(share).toBeLessThan(most);
  });

  it.each(['transmissivity', 'storage'] as const)('by the curve, with the bend seen: %s', (id) => {
    const truth = id === 'storage' ? observed.S : observed.T;
    const share = covered(truth, id, (noise) =>
      theis(noisy(observed, noise), { distanceM: observed.r }, undefined)!,
    );
    expect(share).toBeGreaterThan(least);
    expect(share).toBeLessThan(most);
  });

  it.each(['transmissivity', 'wellLoss'] as const)('by all steps at once: %s', (id) => {
    const C = 1e-4;
    const stepped = [24, 36, 48, 60].map((rateM3d, at) => ({ fromMin: 60 * at, rateM3d }));
    const share = covered(id === 'wellLoss' ? C : well.T, id, (noise) => {
      const readings = stepped.flatMap(({ fromMin, rateM3d }, step) =>
        [1, 2, 5, 10, 20, 40, 60].map((at): TestReading => {
          const loss = C * rateM3d ** 2;
          const drawdownM = drawdownOf(well, stepped, fromMin + at) + loss + errorM * noise();
          const of = { number: step + 1, minutes: at };
          return { path: '', minutes: fromMin + at, drawdownM, rateM3d, step: of };
        }),
      );
      return edenHazel(fitSteps({ readings, leftOut: [], rates: stepped }, {})!, {}, []);
    });
    expect(share).toBeGreaterThan(least);
    expect(share).toBeLessThan(most);
  });
});
