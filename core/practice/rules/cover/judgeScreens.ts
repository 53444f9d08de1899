import { judged, notApplicable, unjudged, type JudgedWell, type Verdict } from '../rule.ts';
import { doubtsOf } from '../doubts.ts';
import { givesWater } from '../stage.ts';
import { screenRuns, type ScreenRun } from '../../../model/screenRuns.ts';
import { isObservationPipe } from './observationPipe.ts';

/** Judges a well with pipes; a hole that was given up, or has no pipes yet, is passed by. */
export function judgePipes(well: JudgedWell, judge: () => Verdict): Verdict {
  const { record, model } = well;
  if (!givesWater(record)) return notApplicable;
  if (model.strings.length > 0) return judge();
  if (record.identity?.state === 'drilled') return notApplicable;
  return unjudged({ what: 'strings', path: 'strings' });
}

/** The same for what stands round the pipes, which needs at least one fill. */
export function judgeFills(well: JudgedWell, judge: () => Verdict): Verdict {
  return judgePipes(well, () =>
    well.record.annulus?.length ? judge() : unjudged({ what: 'fills', path: 'annulus' }),
  );
}

/** Judges the screens to pump from whose depths are certain; a well without any is passed by. */
export function judgeScreens(
  well: JudgedWell,
  judge: (screens: readonly ScreenRun[]) => Verdict,
): Verdict {
  const screened = well.model.strings.filter(
    (string) => screenRuns(string).length > 0 && !isObservationPipe(string),
  );
  if (givesWater(well.record) && well.model.strings.length > 0 && screened.length === 0)
    return notApplicable;
  return judgeFills(well, () => {
    const doubts = screened.flatMap((string) => doubtsOf(well.model, string));
    const certain = screened.filter((string) => doubtsOf(well.model, string).length === 0);
    const verdict = judge(certain.flatMap(screenRuns));
    return doubts.length === 0
      ? verdict
      : judged(verdict.findings, [...doubts, ...verdict.missing]);
  });
}
