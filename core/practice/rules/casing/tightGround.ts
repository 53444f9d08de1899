import { cut, gapsIn, roundDepth, type Range } from '../../../model/range.ts';
import { intervalsOf } from '../../../model/strata.ts';
import type { Stratum, WellModel } from '../../../model/wellModel.ts';
import { conductanceOf } from '../../reading/ground.ts';
import { broken } from '../ruleCodes.ts';
import {
  figureOf,
  judged,
  unjudged,
  type JudgedWell,
  type Missing,
  type Rule,
  type Verdict,
} from '../rule.ts';
import { isOver } from './compare.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';
import { judgeByDepth, type ScreenedString } from './screened.ts';
import { together } from './together.ts';

/**
 * What a screen stands in: `whole` is ground of which the log says how wet it is and yet nothing
 * that would let water through, as dry granite.
 */
type Ground = 'good' | 'poor' | 'whole' | 'unknown';

/** Layers that alternate let water through where one of them does, and so does a water strike. */
function groundOf(stratum: Stratum, { strikes }: WellModel): Ground {
  const intervals = intervalsOf(stratum);
  const all = intervals.map(conductanceOf);
  const struck = strikes.some(({ depthM }) => depthM >= stratum.fromM && depthM <= stratum.toM);
  if (struck || all.includes('good')) return 'good';
  if (all.every((one) => one === 'poor')) return 'poor';
  return intervals.every(({ moisture }) => moisture !== undefined) ? 'whole' : 'unknown';
}

interface Beside extends Range {
  readonly ground: Ground;
  readonly stratum: Stratum;
}

function groundBeside(run: ScreenRun, model: WellModel): Beside[] {
  return model.strata.flatMap((stratum) => {
    const part = cut(stratum, run.fromM, run.toM);
    return part ? [{ ...part, ground: groundOf(stratum, model), stratum }] : [];
  });
}

function lengthOf(parts: readonly Range[]): number {
  return roundDepth(parts.reduce((sum, { fromM, toM }) => sum + toM - fromM, 0));
}

function unknownBeside(run: ScreenRun, beside: readonly Beside[]): Missing[] {
  const unlogged = gapsIn(beside, run.fromM, run.toM).map((gap) => ({
    what: 'log' as const,
    path: 'log',
    ...gap,
  }));
  const unsaid = beside.filter(({ ground }) => ground === 'unknown');
  return [
    ...unlogged,
    ...unsaid.map(({ fromM, toM, stratum }) => ({
      what: 'moisture' as const,
      path: `${stratum.path}.moisture`,
      fromM,
      toM,
    })),
  ];
}

function judgeRun(well: JudgedWell, { label }: ScreenedString, run: ScreenRun): Verdict {
  const beside = groundBeside(run, well.model);
  const missing = unknownBeside(run, beside);
  const gives = missing.length > 0 || beside.some(({ ground }) => ground === 'good');
  const tight = beside.filter(({ ground }) => ground === 'poor' || (ground === 'whole' && !gives));
  const [tightM, screenM] = [lengthOf(tight), lengthOf([run])];
  const share = tightM / screenM;
  if (!isOver(share, figureOf(well, 'screenInTightShare'))) return judged([], missing);
  const grave = isOver(share, figureOf(well, 'screenInTightGraveShare'));
  return judged(
    [
      broken(
        'screened.ground',
        grave ? 'error' : 'warning',
        run.path,
        { string: label, tightM, screenM },
        run,
      ),
    ],
    missing,
  );
}

/** Screens stand in ground that lets water through, not across clay. */
export const tightGround: Rule = {
  id: 'screened.ground',
  figures: ['screenInTightShare', 'screenInTightGraveShare'],
  judge: (well) =>
    judgeByDepth(well, (screened) =>
      well.model.strata.length === 0
        ? unjudged({ what: 'log', path: 'log' })
        : together(screened.runs.map((run) => judgeRun(well, screened, run))),
    ),
};
