import { describe, expect, it } from 'vitest';
import {
  drawRate,
  drawRateScale,
  rateSteps,
  rateWidths,
} from '../../../../../core/drawing/parts/log/rate.ts';
import { yAt } from '../../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, stratum, viewOf, wordsOf } from '../../sample.ts';

const view = viewOf();
const drilled = (from: number, to: number, minutesPerMetre: number) =>
  stratum(from, to, { minutesPerMetre });

const wideLines = (drawn: ReturnType<typeof drawRate>) =>
  pathsOf(drawn).filter(({ stroke }) => stroke!.width > 0.3);

describe('the drilling rate', () => {
  it('is a stepped line whose places across are in proportion', () => {
    const strata = [drilled(0, 5, 4), drilled(5, 9, 8)];
    const [run] = wideLines(drawRate(kit, rateSteps(strata), view)).map(pointsOf);
    const { x } = view.columns.rate;
    expect(run!.map(([, y]) => y)).toEqual([0, 5, 5, 9].map((depth) => yAt(view.axis, depth)));
    expect((run![2]![0] - x) / (run![0]![0] - x)).toBeCloseTo(2, 9);
  });

  it('has a gap where nobody took the time', () => {
    const strata = [drilled(0, 5, 4), stratum(5, 7), drilled(7, 9, 8)];
    const runs = wideLines(drawRate(kit, rateSteps(strata), view));
    expect(runs).toHaveLength(2);
  });

  it.each([
    [0.4, '1'],
    [4, '5'],
    [12, '20'],
    [260, '500'],
  ])('of at most %d min/m is shown to the round %s', (most, full) => {
    const steps = rateSteps([drilled(0, 5, most)]);
    expect(wordsOf(drawRateScale(kit, steps, view.columns.rate, 19))).toEqual(['0', full]);
  });

  it('says each figure beside its step, neighbours with the same figure once', () => {
    const steps = rateSteps([drilled(0, 5, 4), drilled(5, 9, 12.4), drilled(9, 14, 12.4)]);
    expect(wordsOf(drawRate(kit, steps, view))).toEqual(['4', '12']);
  });

  it('leaves out the figure of a step that is too low for it', () => {
    const steps = rateSteps([drilled(0, 0.2, 4), drilled(0.2, 9, 8)]);
    expect(wordsOf(drawRate(kit, steps, view))).toEqual(['8']);
  });

  it('has a column that is the wider the longer its figures are', () => {
    const width = (rate: number) => rateWidths(kit, rateSteps([drilled(0, 5, rate)])).wanted;
    expect(width(260)).toBeGreaterThan(width(4));
  });

  it('leads back to the row that tells it', () => {
    expect(rateSteps([drilled(2, 5, 4)])[0]!.source).toBe('log[2].minutesPerMetre');
  });
});
