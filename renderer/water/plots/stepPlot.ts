import type { TestAnalysis } from '../../../core/hydraulics/results.ts';
import type { Place, PlotSpec } from '../plot/plot.ts';
import { axisOver } from '../plot/scales.ts';
import type { PlotWords } from './plotWords.ts';

/** s/Q over Q of a step test with its line. Undefined where no line was drawn. */
export function stepPlot({ results }: TestAnalysis, words: PlotWords): PlotSpec | undefined {
  const result = results.find(({ method }) => method === 'hantushBierschenk');
  if (!result?.line || result.points.length === 0) return undefined;
  const { points, line } = result;
  const x = axisOver(
    words.rateM3d,
    points.map((point) => point.x),
    { fromZero: true },
  );
  const ends = [0, x.to].map((at): Place => [at, line.at0 + line.slope * at]);
  return {
    title: words.stepLine,
    x,
    y: axisOver(words.drawdownPerRate, [
      ...points.map(({ read }) => read),
      ...ends.map(([, at]) => at),
    ]),
    layers: [
      { kind: 'trace', stroke: 'solid', label: words.straightLine, places: ends },
      {
        kind: 'marks',
        shape: 'disc',
        label: words.read,
        places: points.map((point) => [point.x, point.read] as const),
      },
    ],
  };
}
