import { screenRuns, type ScreenRun } from '../../../model/screenRuns.ts';
import { stringLabel } from '../../../model/setting.ts';
import type { StringModel } from '../../../model/wellModel.ts';
import { notApplicable, unjudged, type JudgedWell, type Verdict } from '../rule.ts';
import { doubtsOf } from '../doubts.ts';
import { givesWater } from '../stage.ts';
import { together } from './together.ts';

/** A string that lets water in. */
export interface ScreenedString {
  readonly string: StringModel;
  readonly label: string | number;
  /** From the top down, at least one. */
  readonly runs: readonly [ScreenRun, ...ScreenRun[]];
}

/** What a string is called in a sentence. */
export function labelOf({ record }: JudgedWell, { index }: StringModel): string | number {
  return stringLabel(record.strings?.[index], index);
}

/** The strings of a well that have screens. */
export function screenedStrings(well: JudgedWell): ScreenedString[] {
  return well.model.strings.flatMap((string) => {
    const [first, ...others] = screenRuns(string);
    return first ? [{ string, label: labelOf(well, string), runs: [first, ...others] }] : [];
  });
}

/** A well whose casing nobody wrote: to be missed where it must be there. */
export function withoutStrings({ record, model }: JudgedWell): Verdict {
  const state = record.identity?.state;
  const isCased = state === 'completed' || state === 'laidOut';
  return isCased && model.strings.length === 0
    ? unjudged({ what: 'strings', path: 'strings' })
    : notApplicable;
}

/**
 * Judges each screened string of a well that is to give water by what the string itself is, which
 * needs no depth.
 */
export function judgeScreened(
  well: JudgedWell,
  judge: (screened: ScreenedString) => Verdict,
): Verdict {
  if (!givesWater(well.record)) return notApplicable;
  const screened = screenedStrings(well);
  return screened.length === 0 ? withoutStrings(well) : together(screened.map(judge));
}

/** The same by the depths of the screens: a string whose depths are in doubt is not judged. */
export function judgeByDepth(
  well: JudgedWell,
  judge: (screened: ScreenedString) => Verdict,
): Verdict {
  return judgeScreened(well, (screened) => {
    const doubts = doubtsOf(well.model, screened.string);
    return doubts.length === 0 ? judge(screened) : unjudged(...doubts);
  });
}
