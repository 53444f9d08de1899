import type { Metres } from '../../base/units.ts';
import type { LevelModel, WellModel } from '../../model/wellModel.ts';

/** Rest levels read over time, and between which they swung. */
export interface LevelSeries {
  /** With a moment, in order of time; depths are below ground, whatever the tape was held to. */
  readonly dated: readonly LevelModel[];
  /** Without one, in the record's order. */
  readonly undated: readonly LevelModel[];
  /** Highest and lowest of those read at rest. */
  readonly highestRest?: LevelModel;
  readonly lowestRest?: LevelModel;
  /** Between both; no more than was seen, so that the year's swing may be larger. */
  readonly seenSwingM?: Metres;
}

function isDated(level: LevelModel): level is LevelModel & { readonly at: string } {
  return level.at !== undefined;
}

/** The levels of a well as a series for a plot, with the swing that was seen at rest. */
export function levelSeries({ levels }: WellModel): LevelSeries {
  const dated = levels
    .filter(isDated)
    .sort((one, other) => Date.parse(one.at) - Date.parse(other.at));
  const undated = levels.filter((level) => !isDated(level));
  const rest = levels
    .filter(({ state }) => state === 'static')
    .sort((one, other) => one.depthM - other.depthM);
  const [highestRest, lowestRest] = [rest[0], rest.at(-1)];
  if (!highestRest || !lowestRest) return { dated, undated };
  if (rest.length === 1) return { dated, undated, highestRest, lowestRest };
  const seenSwingM = lowestRest.depthM - highestRest.depthM;
  return { dated, undated, highestRest, lowestRest, seenSwingM };
}
