import { limits } from '../../../core/hydraulics/limits.ts';
import type { TestAnalysis } from '../../../core/hydraulics/results.ts';
import type { Layer, Place, PlotSpec } from '../plot/plot.ts';
import { logAxisOver } from '../plot/scales.ts';
import type { PlotWords } from './plotWords.ts';

const aboveZero = (places: readonly Place[]) => places.filter(([x, y]) => x > 0 && y > 0);

/**
 * Drawdown and its derivative on log paper with the type curve. Undefined where a test has neither
 * curve nor derivative.
 */
export function logLogPlot(
  { kind, readings, results, derivative }: TestAnalysis,
  words: PlotWords,
  figure: (value: number) => string,
): PlotSpec | undefined {
  const curve = results.find((result) => result.curve !== undefined);
  const slopes = aboveZero(
    (derivative?.points ?? []).map(({ minutes, derivativeM }) => [minutes, derivativeM] as const),
  );
  const read = aboveZero(readings.map(({ minutes, drawdownM }) => [minutes, drawdownM] as const));
  if (read.length === 0 || (!curve && slopes.length === 0)) return undefined;
  const fitted = aboveZero((curve?.points ?? []).map((one) => [one.minutes, one.fitted] as const));
  const derived = words.derivative(figure(derivative?.smoothing ?? limits.smoothing));
  const layers: Layer[] = [
    { kind: 'trace', stroke: 'solid', label: words.typeCurve, places: fitted },
    { kind: 'marks', shape: 'disc', label: words.read, places: read },
    { kind: 'marks', shape: 'cross', label: derived, places: slopes },
  ];
  const drawn = layers.filter(({ places }) => places.length > 0);
  const all = drawn.flatMap(({ places }) => places);
  const recovers = kind === 'recovery';
  return {
    title: curve ? words.logLog : words.logLogDerivative,
    x: logAxisOver(
      recovers ? words.minutesStopped : words.minutes,
      all.map(([x]) => x),
    ),
    y: logAxisOver(
      words.metres,
      all.map(([, y]) => y),
    ),
    layers: drawn,
  };
}
