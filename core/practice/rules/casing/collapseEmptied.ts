import type { DepthM } from '../../../base/units.ts';
import { stringLabel } from '../../../model/setting.ts';
import type { StringModel, WellModel } from '../../../model/wellModel.ts';
import { waterKPaPerM } from '../../strength/collapse.ts';
import { givesWater } from '../stage.ts';
import { broken } from '../ruleCodes.ts';
import {
  figureOf,
  judged,
  notApplicable,
  unjudged,
  type JudgedWell,
  type Rule,
  type Verdict,
} from '../rule.ts';
import { doubtsOf } from '../doubts.ts';
import { pressString, weakest } from './plastic.ts';
import { screenRuns } from '../../../model/screenRuns.ts';
import { withoutStrings } from './screened.ts';
import { together } from './together.ts';

/** The highest rest level that was read: from there down, water presses from outside. */
function highestRestM({ levels }: WellModel): DepthM | undefined {
  const read = levels.filter(({ state }) => state === 'static').map(({ depthM }) => depthM);
  return read.length === 0 ? undefined : Math.min(...read);
}

/**
 * How deep a string may be emptied. While it is developed: down to its uppermost screen, where
 * water comes in again; without a screen, down to its foot. At the pump's intake where that
 * hangs deeper. In a completed well the pump alone empties it.
 */
function emptiedToM({ record, model }: JudgedWell, string: StringModel): DepthM {
  const opensAtM = screenRuns(string)[0]?.fromM ?? string.bottomM;
  const intakeM = model.pump?.intakeM;
  if (intakeM === undefined) return opensAtM;
  const isDeveloped = record.identity?.state === 'completed';
  return Math.min(string.bottomM, isDeveloped ? intakeM : Math.max(opensAtM, intakeM));
}

/** A string that another one stands in over all its length holds no water of its own. */
function isLined(string: StringModel, strings: readonly StringModel[]): boolean {
  return strings.some(
    (other) =>
      other.index > string.index &&
      other.topM <= Math.max(string.topM, 0) &&
      other.bottomM >= string.bottomM,
  );
}

function judgeString(well: JudgedWell, string: StringModel, restM: DepthM): Verdict {
  const emptiedM = emptiedToM(well, string);
  const press = pressString(
    well,
    string,
    ({ bottomM }) => (Math.min(bottomM, emptiedM) - restM) * waterKPaPerM,
    figureOf(well, 'groundC'),
  );
  if (press.pressed.length === 0 && press.missing.length === 0) return notApplicable;
  const wanted = figureOf(well, 'collapseFactor');
  const weak = weakest(press, wanted);
  if (!weak) return judged([], press.missing);
  const { piece, outsideMm, wallMm, loadKPa, holdsKPa, factor } = weak;
  const { record } = well;
  const isBuilt = record.identity?.state === 'completed';
  const values = {
    string: stringLabel(record.strings?.[string.index], string.index),
    outsideMm,
    wallMm,
    restM,
    emptiedM,
    load: Math.round(loadKPa),
    holds: Math.round(holdsKPa),
    factor,
    wanted,
    safeM: restM + holdsKPa / wanted / waterKPaPerM,
  };
  const severity = factor < 1 && !isBuilt ? 'error' : 'warning';
  const stretch = { fromM: piece.topM, toM: piece.bottomM };
  return judged([broken('collapse.emptied', severity, piece.path, values, stretch)], press.missing);
}

function judgeWell(well: JudgedWell): Verdict {
  const { record, model } = well;
  if (!givesWater(record)) return notApplicable;
  const strings = model.strings.filter((string) => !isLined(string, model.strings));
  if (strings.length === 0) return withoutStrings(well);
  const restM = highestRestM(model);
  return together(
    strings.map((string) => {
      const doubts = doubtsOf(model, string);
      if (doubts.length > 0) return unjudged(...doubts);
      return restM === undefined ? unjudgedPlastic(well, string) : judgeString(well, string, restM);
    }),
  );
}

/** Without a rest level: nothing to say of steel, which the rule does not speak of anyway. */
function unjudgedPlastic(well: JudgedWell, string: StringModel): Verdict {
  const { pressed, missing } = pressString(well, string, () => 1, 0);
  if (pressed.length === 0 && missing.length === 0) return notApplicable;
  return unjudged({ what: 'restLevel', path: 'levels' }, ...missing);
}

/**
 * Plastic pipe is not pressed in by the water outside where the well is emptied: it stands at the
 * highest rest level, and inside as deep as the well may be emptied.
 */
export const collapseEmptied: Rule = {
  id: 'collapse.emptied',
  figures: [
    'collapseFactor',
    'pvcModulusMPa',
    'pvcPoisson',
    'pvcRatedAtC',
    'pvcLossPercentPerC',
    'groundC',
  ],
  judge: judgeWell,
};
