import type { StringModel, WellModel } from '../../../model/wellModel.ts';
import {
  judged,
  notApplicable,
  unjudged,
  type JudgedWell,
  type Missing,
  type Verdict,
} from '../rule.ts';
import { givesWater } from './givesWater.ts';
import { isObservationPipe, screensOf, type Screen } from './screens.ts';

/**
 * What keeps a string's depths from being certain: nothing told where it stands, or a piece of
 * its tally has no length.
 */
function doubtOf({ findings }: WellModel, { placedBy, path }: StringModel): Missing[] {
  if (placedBy === 'holeBottom' || placedBy === 'ground')
    return [{ what: 'measuredDepth', path: `${path}.measuredDepth` }];
  const short = findings.find(
    (finding) => finding.code === 'string.noLength' && finding.path.startsWith(path),
  );
  return short ? [{ what: 'strings', path: short.path }] : [];
}

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
  judge: (screens: readonly Screen[]) => Verdict,
): Verdict {
  const screened = well.model.strings.filter(
    (string) => screensOf(string).length > 0 && !isObservationPipe(string),
  );
  if (givesWater(well.record) && well.model.strings.length > 0 && screened.length === 0)
    return notApplicable;
  return judgeFills(well, () => {
    const doubts = screened.flatMap((string) => doubtOf(well.model, string));
    const certain = screened.filter((string) => doubtOf(well.model, string).length === 0);
    const verdict = judge(certain.flatMap(screensOf));
    return doubts.length === 0
      ? verdict
      : judged(verdict.findings, [...doubts, ...verdict.missing]);
  });
}
