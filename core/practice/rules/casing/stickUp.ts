import type { RecordPath } from '../../../base/recordPath.ts';
import type { Metres } from '../../../base/units.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { nestStrings } from '../../../model/column.ts';
import { roundDepth } from '../../../model/range.ts';
import type { StringModel, WellModel } from '../../../model/wellModel.ts';
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
import { isOver, isUnder } from './compare.ts';
import { doubtsOf } from '../doubts.ts';
import { withoutStrings } from './screened.ts';

interface StickUp {
  readonly heightM: Metres;
  readonly path: RecordPath;
  /** Written as a height above ground, not reckoned from depths. */
  readonly isWritten: boolean;
}

/** The innermost string that comes to the surface; else the one that comes nearest to it. */
function topString({ strings }: WellModel): StringModel | undefined {
  const nested = nestStrings(strings);
  return (
    nested.findLast(({ stickUpM }) => stickUpM >= 0) ??
    nested.toSorted((a, b) => a.topM - b.topM)[0]
  );
}

/**
 * Measured at the finished well, else as the string was set. A tally that ends just at ground has
 * left out what stands above it, as lists of wells do.
 */
function stickUpOf({ record, model }: JudgedWell): StickUp | undefined {
  const measuredM = record.headworks?.casingAboveGround;
  if (measuredM !== undefined)
    return { heightM: measuredM, path: 'headworks.casingAboveGround', isWritten: true };
  const string = topString(model);
  if (!string || doubtsOf(model, string).length > 0) return undefined;
  const { stickUpM: heightM, placedBy, path } = string;
  const isWritten = placedBy === 'stickUp';
  if (!isWritten && Math.abs(heightM) <= tapeToleranceM) return undefined;
  return { heightM, path: `${path}.set`, isWritten };
}

function judgeTop(well: JudgedWell): Verdict {
  const { record, model } = well;
  if (!givesWater(record)) return notApplicable;
  const top = stickUpOf(well);
  if (!top)
    return model.strings.length === 0
      ? withoutStrings(well)
      : unjudged({ what: 'stickUp', path: 'headworks.casingAboveGround' });
  const { heightM, path, isWritten } = top;
  const [leastM, mostM] = [figureOf(well, 'stickUpLeastM'), figureOf(well, 'stickUpMostM')];
  const low = isUnder(heightM, leastM);
  const isToBeCut = record.identity?.state === 'drilled';
  if (!low && (isToBeCut || !isOver(heightM, mostM))) return judged([]);
  const isMeant = isWritten || record.identity?.state === 'laidOut';
  const lowSeverity = heightM < 0 && isMeant ? 'error' : 'warning';
  const values = { heightM, leastM, mostM };
  const at = { fromM: roundDepth(-heightM) };
  return judged([broken('stickUp.height', low ? lowSeverity : 'note', path, values, at)]);
}

/** The casing ends high enough that no water runs in, and low enough for the pump. */
export const stickUp: Rule = {
  id: 'stickUp.height',
  figures: ['stickUpLeastM', 'stickUpMostM'],
  judge: judgeTop,
};
