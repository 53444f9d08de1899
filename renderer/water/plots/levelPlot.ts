import type { LevelModel } from '../../../core/model/wellModel.ts';
import type { LevelSeries } from '../../../core/water/levels/levelSeries.ts';
import type { Layer, Place, PlotSpec, Shape } from '../plot/plot.ts';
import { axisOver } from '../plot/scales.ts';
import type { PlotWords } from './plotWords.ts';

/** Names of what a well was doing while a level was read, in the language in use. */
export interface LevelNames {
  readonly states: Readonly<Record<NonNullable<LevelModel['state']>, string>>;
  readonly dry: string;
}

const dayMs = 86_400_000;
const stateShapes = { static: 'disc', pumping: 'triangle', recovering: 'ring' } as const;

/**
 * Levels below ground over the days since the first of them, each state with its own mark, and the
 * level of the dry season. Undefined where fewer than two have a moment.
 */
export function levelPlot(
  { dated }: LevelSeries,
  dryM: number | undefined,
  words: PlotWords,
  names: LevelNames,
): PlotSpec | undefined {
  const [first] = dated;
  if (!first || dated.length < 2) return undefined;
  const start = Date.parse(first.at!);
  const placeOf = ({ at, depthM }: LevelModel): Place => [
    (Date.parse(at!) - start) / dayMs,
    depthM,
  ];
  const places = dated.map(placeOf);
  const x = axisOver(
    words.daysSince(first.at!.slice(0, 10)),
    places.map(([day]) => day),
  );
  const marks = (state: LevelModel['state'], shape: Shape, label: string): Layer => ({
    kind: 'marks',
    shape,
    label,
    places: dated.filter((level) => level.state === state).map(placeOf),
  });
  const layers: Layer[] = [
    ...(Object.keys(stateShapes) as (keyof typeof stateShapes)[]).map((state) =>
      marks(state, stateShapes[state], names.states[state]),
    ),
    marks(undefined, 'square', words.stateUnknown),
    {
      kind: 'trace',
      stroke: 'dashed',
      label: names.dry,
      places: dryM === undefined ? [] : [x.from, x.to].map((at): Place => [at, dryM]),
    },
  ];
  const drawn = layers.filter((layer) => layer.places.length > 0);
  return {
    title: words.levels,
    x,
    y: axisOver(
      words.depth,
      drawn.flatMap((layer) => layer.places.map(([, depthM]) => depthM)),
      { down: true },
    ),
    layers: drawn,
  };
}
