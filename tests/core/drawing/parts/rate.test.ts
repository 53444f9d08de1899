import { describe, expect, it } from 'vitest';
import { drawRate, hasRates } from '../../../../core/drawing/parts/rate.ts';
import { yAt } from '../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, stratum, viewOf, wordsOf } from '../sample.ts';

const view = viewOf();
const drilled = (from: number, to: number, minutesPerMetre: number) =>
  stratum(from, to, { minutesPerMetre });

describe('the drilling rate', () => {
  it('is shown where one interval has it', () => {
    expect(hasRates([stratum(0, 1), drilled(1, 2, 4)])).toBe(true);
    expect(hasRates([stratum(0, 1)])).toBe(false);
  });

  it('is a stepped line whose places across are in proportion', () => {
    const strata = [drilled(0, 5, 4), drilled(5, 9, 8)];
    const [run] = pathsOf(drawRate(kit, strata, view)).map(pointsOf);
    const { x } = view.columns.rate;
    expect(run!.map(([, y]) => y)).toEqual([0, 5, 5, 9].map((depth) => yAt(view.axis, depth)));
    expect((run![2]![0] - x) / (run![0]![0] - x)).toBeCloseTo(2, 9);
  });

  it('has a gap where nobody took the time', () => {
    const strata = [drilled(0, 5, 4), stratum(5, 7), drilled(7, 9, 8)];
    const runs = pathsOf(drawRate(kit, strata, view)).filter(({ stroke }) => stroke!.width > 0.3);
    expect(runs).toHaveLength(2);
  });

  it.each([
    [0.4, '1'],
    [4, '5'],
    [12, '20'],
    [260, '500'],
  ])('of at most %d min/m is shown to the round %s', (most, full) => {
    expect(wordsOf(drawRate(kit, [drilled(0, 5, most)], view))).toEqual(['0', full]);
  });
});
