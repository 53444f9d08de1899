import type { Finding } from '../base/finding.ts';
import { known } from '../base/known.ts';
import type { DepthM, Metres } from '../base/units.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Level } from '../record/water.ts';
import { nestStrings } from './column.ts';
import { found, type Resolved } from './findings.ts';
import { roundDepth } from './range.ts';
import type { LevelModel, StringModel } from './wellModel.ts';

/** The casing top that a tape is held to: its height, and whether anything told it. */
interface Datum {
  readonly stickUpM: Metres;
  readonly assumed: boolean;
}

/**
 * The innermost string whose top can be reached at the surface; without a string, the casing
 * height that was measured at the headworks.
 */
export function casingTop(record: WellRecord, strings: readonly StringModel[]): Datum | undefined {
  const nested = nestStrings(strings);
  const string = nested.findLast(({ stickUpM }) => stickUpM >= 0) ?? nested.at(-1);
  if (string) {
    const { stickUpM, placedBy } = string;
    return { stickUpM, assumed: placedBy === 'holeBottom' || placedBy === 'ground' };
  }
  const stickUpM = record.headworks?.casingAboveGround;
  return stickUpM === undefined ? undefined : { stickUpM, assumed: false };
}

function levelModel(level: Level, depthM: DepthM, path: string): LevelModel {
  const { state, at, rate, minutesPumped, reading: readM, datum } = level;
  return {
    depthM,
    ...known({ state, at, rateM3h: rate, minutesPumped }),
    readM,
    datum,
    path,
  };
}

function checkLevel({ depthM, path }: LevelModel, holeM: DepthM | undefined): Finding[] {
  const at = { fromM: depthM };
  if (depthM < 0) return [found('level.aboveGround', path, { heightM: -depthM }, at)];
  if (holeM !== undefined && depthM > holeM)
    return [found('level.belowHole', path, { levelM: depthM, depthM: holeM }, at)];
  return [];
}

function resolveLevel(
  level: Level,
  path: string,
  top: Datum | undefined,
  holeM: DepthM | undefined,
): Resolved<LevelModel[]> {
  const readM = level.reading;
  if (level.datum === 'ground') {
    const model = levelModel(level, roundDepth(readM), path);
    return { value: [model], findings: checkLevel(model, holeM) };
  }
  if (!top) return { value: [], findings: [found('level.noStickUp', path, { readM })] };
  const model = levelModel(level, roundDepth(readM - top.stickUpM), path);
  const values = { readM, stickUpM: top.stickUpM };
  const assumed = top.assumed
    ? [found('level.stickUpAssumed', path, values, { fromM: model.depthM })]
    : [];
  return { value: [model], findings: [...assumed, ...checkLevel(model, holeM)] };
}

/**
 * Levels as depths below ground: readings from the casing top less its height above ground. A
 * reading whose casing top is not known is left out and said.
 */
export function resolveLevels(
  record: WellRecord,
  strings: readonly StringModel[],
  holeM: DepthM | undefined,
): Resolved<LevelModel[]> {
  const top = casingTop(record, strings);
  const resolved = (record.levels ?? []).map((level, at) =>
    resolveLevel(level, `levels[${at}]`, top, holeM),
  );
  return {
    value: resolved.flatMap(({ value }) => value),
    findings: resolved.flatMap(({ findings }) => findings),
  };
}

/** The latest level read at rest; of those without a moment, the last in the list. */
export function latestRest(levels: readonly LevelModel[]): LevelModel | undefined {
  const moment = ({ at }: LevelModel) => (at === undefined ? -Infinity : Date.parse(at));
  return levels
    .filter(({ state }) => state === 'static')
    .reduce<LevelModel | undefined>(
      (latest, level) => (latest && moment(latest) > moment(level) ? latest : level),
      undefined,
    );
}
