import type { MethodId } from '../../../core/hydraulics/codes.ts';
import type { TestAnalysis } from '../../../core/hydraulics/results.ts';
import { shapes, type Layer, type PlotSpec } from '../plot/plot.ts';
import { axisOver, logAxisOver } from '../plot/scales.ts';
import type { PlotWords } from './plotWords.ts';

const mmPerM = 1000;

/**
 * What is left between reading and method, by method, in millimetres. Undefined where no method
 * goes by readings of the level themselves.
 */
export function residualPlot(
  { kind, results }: TestAnalysis,
  words: PlotWords,
  nameOf: (method: MethodId) => string,
): PlotSpec | undefined {
  const fitted = results.filter(
    ({ method, points }) => method !== 'hantushBierschenk' && points.length > 0,
  );
  if (fitted.length === 0) return undefined;
  const layers = fitted.map(({ method, points }, at): Layer => ({
    kind: 'marks',
    shape: shapes[at % shapes.length]!,
    label: nameOf(method),
    places: points.map(({ minutes, read, fitted: by }) => [minutes, (read - by) * mmPerM] as const),
  }));
  const all = layers.flatMap(({ places }) => places);
  const x = logAxisOver(
    kind === 'recovery' ? words.minutesStopped : words.minutes,
    all.map(([at]) => at),
  );
  const far = Math.max(1, ...all.map(([, off]) => Math.abs(off)));
  return {
    title: words.residuals,
    x,
    y: axisOver(words.residualMm, [-far, far]),
    layers: [
      { kind: 'trace', stroke: 'solid', places: [x.from, x.to].map((at) => [at, 0] as const) },
      ...layers,
    ],
  };
}
