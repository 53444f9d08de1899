import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyseTests } from '../../../core/hydraulics/analyseTests.ts';
import type { TestAnalysis } from '../../../core/hydraulics/results.ts';
import { resolveWell } from '../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { english } from '../../../renderer/parts/words/en/index.ts';
import type { PlotSpec } from '../../../renderer/water/plot/plot.ts';
import { axisOver, logAxisOver, scaleOf, ticksOf } from '../../../renderer/water/plot/scales.ts';
import { drawdownPlot } from '../../../renderer/water/plots/drawdownPlot.ts';
import { logLogPlot } from '../../../renderer/water/plots/logLogPlot.ts';
import { residualPlot } from '../../../renderer/water/plots/residualPlot.ts';
import { bandOf, semiLogPlot } from '../../../renderer/water/plots/semiLogPlot.ts';
import { stepPlot } from '../../../renderer/water/plots/stepPlot.ts';

const words = english.water.plots;
const demo = JSON.parse(readFileSync('demo-data/hand-drilled-32m.json', 'utf8')) as WellRecord;
const analyses = analyseTests(demo, resolveWell(demo));
const [step, constant, recovery] = analyses as [TestAnalysis, TestAnalysis, TestAnalysis];

const layer = ({ layers }: PlotSpec, label: string) => {
  const found = layers.find((one) => one.label === label);
  if (!found) throw new Error(`No layer ${label}`);
  return found.places;
};
const none: TestAnalysis = { ...constant, results: [], readings: [] };

describe('axes', () => {
  it('hold all values with some room, and turn over where larger stands lower', () => {
    const axis = axisOver('m', [1, 3], { down: true });
    expect([axis.from < 1, axis.to > 3, axis.down]).toEqual([true, true, true]);
    expect(axisOver('m', [1, 3], { fromZero: true }).from).toBe(0);
    expect(axisOver('m', [2]).to).toBeGreaterThan(2);
  });

  it('in logarithms pass over what is not above nothing', () => {
    const axis = logAxisOver('min', [0, 1, 100]);
    expect(axis.from).toBeGreaterThan(0.5);
    const scale = scaleOf(axis, [0, 300]);
    expect(scale(10)).toBeCloseTo(150, 0);
  });

  it('name powers of ten, and 2 and 5 where there are few', () => {
    const named = (from: number, to: number) =>
      ticksOf({ kind: 'log', label: '', from, to }, 5, '.').flatMap(({ label }) => label ?? []);
    expect(named(1, 1000)).toEqual(['1', '10', '100', '1000']);
    expect(named(1, 10)).toEqual(['1', '2', '5', '10']);
    expect(
      ticksOf({ kind: 'linear', label: '', from: 0, to: 1 }, 3, ',').map(({ label }) => label),
    ).toContain('0,5');
  });
});

describe('plots of a test', () => {
  it('show every reading over time, deeper standing lower', () => {
    const plot = drawdownPlot(constant, words);
    expect(layer(plot, 'reading')).toHaveLength(25);
    expect(plot.y.down).toBe(true);
  });

  it('draw the straight line by its slope over a log cycle', () => {
    const plot = semiLogPlot(constant, words, bandOf(constant, 3, 360));
    const [first, last] = [layer(plot, 'straight line')[0]!, layer(plot, 'straight line').at(-1)!];
    const slope = (last[1] - first[1]) / Math.log10(last[0] / first[0]);
    const said = constant.results[0]!.estimates.find(({ id }) => id === 'slope')!.value;
    expect(slope).toBeCloseTo(said, 9);
    expect(plot.band).toMatchObject({ from: 3, to: 360 });
  });

  it('of a recovery run over t/t′', () => {
    const plot = semiLogPlot(recovery, words, undefined);
    // Pumped for 360 min and read at 1 min after: t/t′ is 361.
    expect(layer(plot, 'reading')[0]![0]).toBe(361);
    // 361, and (360 + 240) / 240.
    expect(bandOf(recovery, 1, 240)).toEqual({ from: 2.5, to: 361 });
  });

  it('have the curve and the derivative on log paper, but none for steps', () => {
    const plot = logLogPlot(constant, words, String)!;
    expect(plot.layers.map(({ label }) => label)).toEqual([
      'type curve',
      'reading',
      'derivative by Bourdet, smoothed over L = 0.3 in ln t',
    ]);
    expect(logLogPlot(recovery, words, String)?.title).toBe('Log-log, with the derivative');
    expect(logLogPlot(step, words, String)).toBeUndefined();
  });

  it('have s/Q over Q for steps alone, with one point each', () => {
    expect(layer(stepPlot(step, words)!, 'reading')).toHaveLength(4);
    expect(stepPlot(constant, words)).toBeUndefined();
  });

  it('have residuals in millimetres, each method with its own mark', () => {
    const plot = residualPlot(constant, words, (method) => method)!;
    const marks = plot.layers.flatMap((one) => (one.kind === 'marks' ? [one.shape] : []));
    expect(new Set(marks).size).toBe(marks.length);
    const { read, fitted } = constant.results[0]!.points[0]!;
    expect(layer(plot, 'cooperJacob')[0]![1]).toBeCloseTo((read - fitted) * 1000, 9);
  });

  it('are left out where there is nothing to draw', () => {
    expect(logLogPlot(none, words, String)).toBeUndefined();
    expect(residualPlot(none, words, String)).toBeUndefined();
    expect(bandOf(constant, 1000, 2000)).toBeUndefined();
  });
});
