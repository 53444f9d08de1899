import type { DevelopmentSeries } from '../../../core/water/levels/developmentSeries.ts';
import type { Layer, Place, PlotSpec } from '../plot/plot.ts';
import { axisOver, logAxisOver } from '../plot/scales.ts';
import type { PlotWords } from './plotWords.ts';

/** Names of what is measured, in the language in use. */
export interface DevelopmentNames {
  readonly turbidity: string;
  readonly sand: string;
}

const lastHour = ({ events }: DevelopmentSeries) =>
  Math.max(0, ...events.flatMap(({ toH }) => toH ?? []));

/** Turbidity and sand over the hours worked, with the limits of the practice. */
export function qualityPlot(
  series: DevelopmentSeries,
  words: PlotWords,
  names: DevelopmentNames,
): PlotSpec | undefined {
  const { turbidity, sand, criteria } = series;
  if (turbidity.length + sand.length === 0) return undefined;
  const x = axisOver(words.hours, [0, lastHour(series)], { fromZero: true });
  const limitOf = (id: string) => criteria.find((one) => one.id === id)?.limit.value;
  const kinds = [
    {
      points: turbidity,
      name: names.turbidity,
      shape: 'disc',
      stroke: 'dashed',
      id: 'turbidityNtu',
    },
    { points: sand, name: names.sand, shape: 'square', stroke: 'dotted', id: 'sandMgL' },
  ] as const;
  const layers = kinds.flatMap(({ points, name, shape, stroke, id }): Layer[] => {
    const limit = limitOf(id);
    if (points.length === 0) return [];
    const places = points.map(({ hours, value }): Place => [hours, value]);
    const line = limit === undefined ? [] : [x.from, x.to].map((at): Place => [at, limit]);
    return [
      { kind: 'trace', stroke: 'solid', places },
      { kind: 'marks', shape, label: name, places },
      { kind: 'trace', stroke, label: words.limitOf(name), places: line },
    ];
  });
  const values = layers.flatMap(({ places }) => places.map(([, value]) => value));
  const isLog = values.every((value) => value > 0);
  return {
    title: words.quality,
    x,
    y: isLog ? logAxisOver('NTU, mg/L', values) : axisOver('NTU, mg/L', values, { fromZero: true }),
    layers,
  };
}

/** The rate of each event over its hours; what was not pumped leaves a gap. */
export function ratePlot(series: DevelopmentSeries, words: PlotWords): PlotSpec | undefined {
  const layers = series.events.flatMap(({ fromH, toH, rateM3h }): Layer[] =>
    fromH === undefined || toH === undefined || rateM3h === undefined
      ? []
      : [
          {
            kind: 'trace',
            stroke: 'solid',
            places: [
              [fromH, 0],
              [fromH, rateM3h],
              [toH, rateM3h],
              [toH, 0],
            ],
          },
        ],
  );
  if (layers.length === 0) return undefined;
  const rates = layers.flatMap(({ places }) => places.map(([, rate]) => rate));
  return {
    title: words.rate,
    x: axisOver(words.hours, [0, lastHour(series)], { fromZero: true }),
    y: axisOver('m³/h', rates, { fromZero: true }),
    layers,
  };
}
