import type { Finding, Severity } from '../../../base/finding.ts';
import { cut } from '../../../model/range.ts';
import type { AnnulusZone } from '../../../model/wellModel.ts';
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
import { isOver, isUnder } from './compare.ts';
import { finestGround, type FinestGround } from './finest.ts';
import { besideScreen, packGrainOf, packSize, pathOfZone, wholePackGrain } from './pack.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';
import { judgeByDepth, type ScreenedString } from './screened.ts';
import { together } from './together.ts';

/** Per cent that is finer: the size that 70 % of a grain is retained on. */
const finerPercent = 30;
/** d60 / d10 from which sand is called well graded, ASTM D2487 (from memory). */
const unevenFrom = 6;

/** Between how many times the ground's grain a pack may be for certain, and at the utmost. */
interface Times {
  readonly least: number;
  readonly most: number;
  readonly utmost: number;
}

function timesFor(well: JudgedWell, { layer }: FinestGround): Times {
  const least = figureOf(well, 'packToFormationLeast');
  const even = figureOf(well, 'packToFormationMost');
  const uneven = Math.max(even, figureOf(well, 'packToUnevenMost'));
  if (layer.uniformity === undefined) return { least, most: even, utmost: uneven };
  const most = isUnder(layer.uniformity, unevenFrom) ? even : uneven;
  return { least, most, utmost: most };
}

function judgePack(
  well: JudgedWell,
  { label }: ScreenedString,
  run: ScreenRun,
  zone: AnnulusZone,
): Verdict {
  const beside = cut(zone, run.fromM, run.toM) ?? run;
  const ground = finestGround(well.model, beside, finerPercent);
  if (ground === 'none') return notApplicable;
  const path = pathOfZone(zone);
  const grain = wholePackGrain(packGrainOf(well, zone));
  if (!grain) return unjudged({ what: 'packGrain', path: `${path}.grainMin` });
  if (!('layer' in ground)) return unjudged(...ground.untold);
  const pack = packSize(grain, finerPercent);
  const { least, most, utmost } = timesFor(well, ground);
  const [fewest, highest] = [pack / ground.mostMm, pack / ground.leastMm];
  const say = (severity: Severity, ratio: number, at: number): Finding =>
    broken(
      'grain.pack',
      severity,
      path,
      { string: label, pack, ground: at, ratio, least, most: utmost },
      beside,
    );
  if (isOver(fewest, utmost)) return judged([say('warning', fewest, ground.mostMm)]);
  if (isUnder(highest, least)) return judged([say('note', highest, ground.leastMm)]);
  const meets = !isUnder(fewest, least) && !isOver(highest, most);
  return meets ? judged([]) : unjudged(...ground.untold);
}

function judgeRun(well: JudgedWell, screened: ScreenedString, run: ScreenRun): Verdict {
  const { packs, untold } = besideScreen(well, screened.string, run);
  const unknown = untold.length === 0 ? [] : [unjudged(...untold)];
  return together([...packs.map((zone) => judgePack(well, screened, run, zone)), ...unknown]);
}

/**
 * A gravel pack is some times as coarse as the finest ground that is screened: coarser lets sand
 * through, finer holds water back. Both sizes are those that 70 % is retained on.
 */
export const packToGround: Rule = {
  id: 'grain.pack',
  figures: ['packToFormationLeast', 'packToFormationMost', 'packToUnevenMost'],
  judge: (well) =>
    judgeByDepth(well, (screened) =>
      well.model.strata.length === 0
        ? unjudged({ what: 'log', path: 'log' })
        : together(screened.runs.map((run) => judgeRun(well, screened, run))),
    ),
};
