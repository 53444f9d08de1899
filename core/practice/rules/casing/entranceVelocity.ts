import type { DepthM } from '../../../base/units.ts';
import { cut, roundDepth } from '../../../model/range.ts';
import type { Component } from '../../../record/strings.ts';
import { valueAt } from '../../../base/recordPath.ts';
import type { PieceModel } from '../../../model/wellModel.ts';
import { openAreaPercentOf } from '../../reading/openArea.ts';
import { designRateM3h, pumpingLevelM } from '../../reading/water.ts';
import { entranceMs, type ScreenFace } from '../../strength/entrance.ts';
import { givesWater } from '../stage.ts';
import { broken } from '../ruleCodes.ts';
import {
  figureOf,
  judged,
  notApplicable,
  unjudged,
  type JudgedWell,
  type Missing,
  type Rule,
  type Verdict,
} from '../rule.ts';
import { isOver } from './compare.ts';
import { doubtsOf } from '../doubts.ts';
import { screenedStrings, withoutStrings, type ScreenedString } from './screened.ts';

/** A piece of screen, with what is missing of it. */
interface Face {
  readonly face?: ScreenFace;
  readonly missing: readonly Missing[];
}

/** The part of a piece under a level, or all of it where no level is known. */
function faceOf({ record }: JudgedWell, piece: PieceModel, levelM: DepthM | undefined): Face {
  const { topM, bottomM, insertionM, outsideMm, path } = piece;
  const wet = cut(
    { fromM: topM, toM: roundDepth(bottomM - insertionM) },
    levelM ?? -Infinity,
    Infinity,
  );
  if (!wet) return { missing: [] };
  const openPercent = openAreaPercentOf(valueAt(record, path) as Component);
  if (outsideMm === undefined || openPercent === undefined)
    return {
      missing: [
        ...(outsideMm === undefined
          ? [{ what: 'pipeDiameter' as const, path: `${path}.outside` }]
          : []),
        ...(openPercent === undefined
          ? [{ what: 'openArea' as const, path: `${path}.openArea` }]
          : []),
      ],
    };
  return { face: { lengthM: wet.toM - wet.fromM, outsideMm, openPercent }, missing: [] };
}

function judgeWet(
  well: JudgedWell,
  screened: readonly ScreenedString[],
  rate: number,
  levelM: DepthM | undefined,
): Verdict {
  const runs = screened.flatMap((one) => one.runs);
  const told = runs.flatMap(({ pieces }) => pieces.map((piece) => faceOf(well, piece, levelM)));
  const missing = told.flatMap((one) => one.missing);
  if (missing.length > 0) return unjudged(...missing);
  const faces = told.flatMap(({ face }) => face ?? []);
  if (faces.length === 0) return judged([]);
  const most = figureOf(well, 'entranceVelocityMs');
  const speed = entranceMs(rate, faces, figureOf(well, 'openShare'));
  if (isOver(speed, most)) {
    const screenM = roundDepth(faces.reduce((sum, { lengthM }) => sum + lengthM, 0));
    const values = { rate, screenM, speed: speed * 100, most: most * 100 };
    const [first, last] = [runs[0], runs.at(-1)];
    const stretch = first && last ? { fromM: first.fromM, toM: last.toM } : undefined;
    return judged([
      broken('screened.velocity', 'warning', first?.path ?? 'strings', values, stretch),
    ]);
  }
  return levelM === undefined
    ? unjudged({ what: 'pumpingLevel', path: 'layingOut.drawdown' })
    : judged([]);
}

function judgeVelocity(well: JudgedWell): Verdict {
  const { record, model } = well;
  if (!givesWater(record)) return notApplicable;
  const screened = screenedStrings(well);
  if (screened.length === 0) return withoutStrings(well);
  const doubts = screened.flatMap(({ string }) => doubtsOf(model, string));
  if (doubts.length > 0) return unjudged(...doubts);
  const rate = designRateM3h(record);
  if (!rate) return unjudged({ what: 'designRate', path: 'layingOut.rate' });
  return judgeWet(well, screened, rate, pumpingLevelM(record, model));
}

/**
 * Water goes slowly through the slots that stand under the pumping level, at the rate that the
 * well is to give. Where that level is not known all screens are counted, which can only condemn.
 */
export const entranceVelocity: Rule = {
  id: 'screened.velocity',
  figures: ['entranceVelocityMs', 'openShare'],
  judge: judgeVelocity,
};
