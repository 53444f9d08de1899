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
import { isOver } from './compare.ts';
import { finestGround, type FinestGround } from './finest.ts';
import { besideScreen, screenRows } from './pack.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';
import { judgeByDepth, type ScreenedString } from './screened.ts';
import { together } from './together.ts';

type Row = ReturnType<typeof screenRows>[number];

function judgeSlot(
  { label }: ScreenedString,
  run: ScreenRun,
  { path, component }: Row,
  ground: FinestGround,
  keeps: number,
): Verdict {
  const { slotWidth } = component;
  if (!slotWidth) return unjudged({ what: 'slotWidth', path: `${path}.slotWidth` });
  const { mostMm: limit, leastMm } = ground;
  if (!isOver(slotWidth, leastMm)) return judged([]);
  if (!isOver(slotWidth, limit)) return unjudged(...ground.untold);
  const values = { string: label, slot: slotWidth, limit, keeps };
  return judged([broken('slot.ground', 'warning', path, values, run)]);
}

function judgeBeside(
  well: JudgedWell,
  screened: ScreenedString,
  run: ScreenRun,
  zone: AnnulusZone,
): Verdict {
  const keeps = figureOf(well, 'slotRetainsGroundPercent');
  const ground = finestGround(well.model, cut(zone, run.fromM, run.toM) ?? run, 100 - keeps);
  if (ground === 'none') return notApplicable;
  if (!('layer' in ground)) return unjudged(...ground.untold);
  return together(screenRows(well, run).map((row) => judgeSlot(screened, run, row, ground, keeps)));
}

/**
 * Where no gravel was poured, slots keep back the coarser share of the ground itself, which makes
 * its own pack while the well is developed.
 */
export const slotToGround: Rule = {
  id: 'slot.ground',
  figures: ['slotRetainsGroundPercent'],
  judge: (well) =>
    judgeByDepth(well, (screened) =>
      together(
        screened.runs.flatMap((run) =>
          besideScreen(well, screened.string, run).ground.map((zone) =>
            judgeBeside(well, screened, run, zone),
          ),
        ),
      ),
    ),
};
