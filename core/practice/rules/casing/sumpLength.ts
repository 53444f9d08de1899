import { roundDepth } from '../../../model/range.ts';
import { broken } from '../ruleCodes.ts';
import { figureOf, judged, unjudged, type JudgedWell, type Missing, type Rule } from '../rule.ts';
import { isOver, isUnder } from './compare.ts';
import { judgeScreened, type ScreenedString } from './screened.ts';

/** Rows of the tally under the lowest screen whose length nobody wrote. */
function withoutLength({ record }: JudgedWell, { string }: ScreenedString): Missing[] {
  const components = record.strings?.[string.index]?.components ?? [];
  const screenAt = components.findIndex(
    ({ kind, length }) => kind === 'screen' && (length ?? 0) > 0,
  );
  return components
    .slice(0, screenAt)
    .flatMap(({ kind, length, count }, at) =>
      kind === 'cap' || count === 0 || (length ?? 0) > 0
        ? []
        : [{ what: 'strings' as const, path: `${string.path}.components[${at}].length` }],
    );
}

function judgeSump(well: JudgedWell, screened: ScreenedString) {
  const missing = withoutLength(well, screened);
  if (missing.length > 0) return unjudged(...missing);
  const { string, label, runs } = screened;
  const lowest = runs.at(-1) ?? runs[0];
  const under = string.pieces.slice(
    string.pieces.findLastIndex(({ kind }) => kind === 'screen') + 1,
  );
  const pipes = under.filter(({ kind }) => kind !== 'cap');
  const [top, foot] = [pipes[0], pipes.at(-1)];
  const sumpM = top && foot ? roundDepth(foot.bottomM - top.topM) : 0;
  // Lists of wells write the screen and leave out what closes the casing under it.
  if (sumpM === 0 && well.record.identity?.state === undefined)
    return unjudged({ what: 'state', path: 'identity.state' });
  const leastM = figureOf(well, 'sumpLeastM');
  const mostM = figureOf(well, 'sumpMostM');
  const short = isUnder(sumpM, leastM);
  if (!short && !isOver(sumpM, mostM)) return judged([]);
  return judged([
    broken(
      'sump.length',
      short ? 'warning' : 'note',
      foot?.path ?? lowest.path,
      { string: label, sumpM, leastM, mostM },
      top && foot ? { fromM: top.topM, toM: foot.bottomM } : { fromM: lowest.toM },
    ),
  ]);
}

/** Plain pipe under the lowest screen: long enough to collect sand, not longer than it helps. */
export const sumpLength: Rule = {
  id: 'sump.length',
  figures: ['sumpLeastM', 'sumpMostM'],
  judge: (well) => judgeScreened(well, (screened) => judgeSump(well, screened)),
};
