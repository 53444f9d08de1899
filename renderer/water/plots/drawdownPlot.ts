import type { TestAnalysis } from '../../../core/hydraulics/results.ts';
import type { PlotSpec } from '../plot/plot.ts';
import { axisOver } from '../plot/scales.ts';
import type { PlotWords } from './plotWords.ts';

/** Drawdown over time, as it was read. */
export function drawdownPlot({ kind, readings }: TestAnalysis, words: PlotWords): PlotSpec {
  const recovers = kind === 'recovery';
  return {
    title: words.linear,
    x: axisOver(
      recovers ? words.minutesStopped : words.minutes,
      readings.map(({ minutes }) => minutes),
      { fromZero: true },
    ),
    y: axisOver(
      recovers ? words.residualDrawdown : words.drawdown,
      readings.map(({ drawdownM }) => drawdownM),
      { fromZero: true, down: true },
    ),
    layers: [
      {
        kind: 'trace',
        stroke: 'dotted',
        places: readings.map(({ minutes, drawdownM }) => [minutes, drawdownM] as const),
      },
      {
        kind: 'marks',
        shape: 'disc',
        label: words.read,
        places: readings.map(({ minutes, drawdownM }) => [minutes, drawdownM] as const),
      },
    ],
  };
}
