import type { FittedPoint, TestAnalysis } from '../../../core/hydraulics/results.ts';
import type { Band, Layer, Place, PlotSpec } from '../plot/plot.ts';
import { axisOver, logAxisOver } from '../plot/scales.ts';
import type { PlotWords } from './plotWords.ts';
import { lineOf, onTimeAxis, placesOf } from './timeOf.ts';

/** The line where it was drawn, at the readings that it goes by. */
function fittedPlaces(analysis: TestAnalysis, points: readonly FittedPoint[]): Place[] {
  return points.flatMap(({ minutes, fitted }): Place[] => {
    const reading = analysis.readings.find((one) => one.minutes === minutes);
    const x = reading && onTimeAxis(analysis, reading);
    return x === undefined ? [] : [[x, fitted]];
  });
}

/** The line drawn on to both ends of the axis; only where one rate makes it straight there. */
function drawnOn(
  { rates }: TestAnalysis,
  places: readonly Place[],
  from: number,
  to: number,
): Place[] {
  const [first, last] = [places[0], places.at(-1)];
  if (!first || !last || rates.length !== 1 || first[0] === last[0]) return [];
  const slope = (last[1] - first[1]) / Math.log10(last[0] / first[0]);
  return [from, to].map((x) => [x, first[1] + slope * Math.log10(x / first[0])] as const);
}

/** A stretch between two minutes of a test on the axis of its plot; undefined where none shows. */
export function bandOf(analysis: TestAnalysis, fromMin: number, toMin: number): Band | undefined {
  const within = analysis.readings
    .filter(({ minutes }) => minutes >= fromMin && minutes <= toMin)
    .flatMap((reading) => onTimeAxis(analysis, reading) ?? []);
  if (within.length === 0) return undefined;
  return { from: Math.min(...within), to: Math.max(...within) };
}

/** Drawdown over the logarithm of time, or of t/t′, with the straight line and its stretch. */
export function semiLogPlot(
  analysis: TestAnalysis,
  words: PlotWords,
  band: Band | undefined,
): PlotSpec {
  const recovers = analysis.kind === 'recovery';
  const places = placesOf(analysis);
  const x = logAxisOver(
    recovers ? words.timeRatio : words.minutes,
    places.map(([at]) => at),
  );
  const fitted = fittedPlaces(analysis, lineOf(analysis)?.points ?? []);
  const line: Layer[] =
    fitted.length === 0
      ? []
      : [
          { kind: 'trace', stroke: 'dashed', places: drawnOn(analysis, fitted, x.from, x.to) },
          { kind: 'trace', stroke: 'solid', label: words.straightLine, places: fitted },
        ];
  return {
    title: words.semiLog,
    x,
    y: axisOver(
      recovers ? words.residualDrawdown : words.drawdown,
      places.map(([, drawdown]) => drawdown),
      { down: true },
    ),
    layers: [...line, { kind: 'marks', shape: 'disc', label: words.read, places }],
    ...(band ? { band: { ...band, label: words.window } } : {}),
  };
}
