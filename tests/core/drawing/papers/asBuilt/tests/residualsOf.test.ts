import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { residualsPlot } from '../../../../../../core/drawing/papers/asBuilt/tests/residualsOf.ts';
import {
  pumpingSemiLog,
  resultBy,
} from '../../../../../../core/drawing/papers/asBuilt/tests/plotsOf.ts';
import { testKit } from '../../../../../../core/drawing/papers/asBuilt/tests/testKit.ts';
import { analyseTests } from '../../../../../../core/hydraulics/analyseTests.ts';
import type { TestAnalysis } from '../../../../../../core/hydraulics/results.ts';
import { resolveWell } from '../../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../../core/record/schema.ts';
import { kit } from '../../../trial.ts';

const own = testKit(kit);
const demo = JSON.parse(readFileSync('demo-data/hand-drilled-32m.json', 'utf8')) as WellRecord;
const [step, constant] = analyseTests(demo, resolveWell(demo)) as [TestAnalysis, TestAnalysis];

describe('the residuals of a method on paper', () => {
  it('are measured less fitted in millimetres, on the axis of the plot above', () => {
    const above = pumpingSemiLog(own, constant);
    const plot = residualsPlot(own, constant, 'cooperJacob', above)!;
    const [first] = resultBy(constant, 'cooperJacob')!.points;
    const [x, y] = plot.points[0]!.points[0]!.at;
    expect(plot.x).toBe(above!.x);
    expect(x).toBeCloseTo(10 ** first!.x, 9);
    expect(y).toBeCloseTo(1000 * (first!.read - first!.fitted), 9);
  });

  it('lead back to their readings', () => {
    const plot = residualsPlot(own, constant, 'theis', undefined)!;
    expect(
      plot.points[0]!.points.every(({ source }) => source?.startsWith('tests[1].series')),
    ).toBe(true);
  });

  it('are of drawdown over rate at the ends of steps, of a level for all steps at once', () => {
    const ofEnds = residualsPlot(own, step, 'hantushBierschenk', undefined)!;
    expect(ofEnds.yTitle).toBe('measured less fitted, d/m²');
    expect(residualsPlot(own, step, 'edenHazel', undefined)!.yTitle).toMatch(/mm$/);
  });

  it('stand as far over nothing as under it', () => {
    const { y } = residualsPlot(own, constant, 'theis', undefined)!;
    expect(y.from).toBeCloseTo(-y.to, 9);
  });

  it('are not drawn for a method that goes by one reading', () => {
    expect(residualsPlot(own, constant, 'logan', undefined)).toBeUndefined();
  });
});
