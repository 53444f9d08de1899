import { describe, expect, it } from 'vitest';
import type { PathItem, TextItem } from '../../../../../core/drawing/items.ts';
import { linearAxis, logAxis, type Axis } from '../../../../../core/drawing/parts/plots/axis.ts';
import { drawPlot, type Plot } from '../../../../../core/drawing/parts/plots/plot.ts';
import { solid } from '../../../../../core/drawing/pens.ts';
import { groupsNamed } from '../../../../sheets/placed.ts';
import { kit, within } from '../../trial.ts';

const box = { x: 20, y: 10, width: 100, height: 60 };

function plotted(x: Axis, y: Axis, points: readonly (readonly [number, number])[]) {
  const plot: Plot = {
    title: 'Drawdown',
    x,
    y,
    xTitle: 'time, min',
    yTitle: 's, m',
    lines: [{ name: 'line', stroke: solid('medium'), points }],
    points: [{ name: 'readings', sign: 'cross', points: points.map((at) => ({ at })) }],
  };
  const drawn = drawPlot(kit, plot, box);
  const texts = within(drawn).filter((one): one is TextItem => one.kind === 'text');
  const signs = groupsNamed([drawn], 'readings')
    .flatMap(({ items }) => groupsNamed(items, 'sign'))
    .map(({ items }) => items[0] as PathItem)
    .map(({ segments: [a, b] }) => [(a![1]! + b![1]!) / 2, (a![2]! + b![2]!) / 2] as const);
  return { texts, signs };
}

/** Middle of the text of a figure under the plot. */
const middleOf = (texts: readonly TextItem[], text: string) => {
  const found = texts.find((one) => one.text === text)!;
  return found.x + found.width / 2;
};

describe('a plot', () => {
  it('sets points where the figures of its axes say, as read off between them', () => {
    const { texts, signs } = plotted(linearAxis([0, 100]), linearAxis([0, 3]), [[25, 1.5]]);
    const [from, to] = [middleOf(texts, '0'), middleOf(texts, '100')];
    expect(signs[0]![0]).toBeCloseTo(from + (to - from) / 4, 6);
  });

  it('sets 31.6 halfway between 10 and 100 on a logarithmic axis', () => {
    const { texts, signs } = plotted(logAxis([1, 100]), linearAxis([0, 3]), [[10 ** 1.5, 1]]);
    expect(signs[0]![0]).toBeCloseTo((middleOf(texts, '10') + middleOf(texts, '100')) / 2, 6);
  });

  it('draws a drawdown downwards where the axis grows so', () => {
    const down = { ...linearAxis([0, 3]), backwards: true };
    const { signs } = plotted(linearAxis([0, 10]), down, [
      [1, 1],
      [2, 2],
    ]);
    expect(signs[1]![1]).toBeGreaterThan(signs[0]![1]);
  });

  it('leaves out what does not lie on its axes', () => {
    const { signs } = plotted(linearAxis([0, 10]), linearAxis([0, 3]), [
      [5, 2],
      [Infinity, 2],
      [50, 2],
    ]);
    expect(signs).toHaveLength(1);
  });

  it('names its readings and lines in a key', () => {
    const { texts } = plotted(linearAxis([0, 10]), linearAxis([0, 3]), [[5, 2]]);
    const said = texts.map(({ text }) => text);
    expect(said).toEqual(expect.arrayContaining(['readings', 'line', 'time, min', 's, m']));
  });
});
