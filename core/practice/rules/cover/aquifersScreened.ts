import type { Finding } from '../../../base/finding.ts';
import { cut, roundDepth } from '../../../model/range.ts';
import { stringLabel } from '../../../model/setting.ts';
import type { StringModel } from '../../../model/wellModel.ts';
import {
  figureOf,
  judged,
  notApplicable,
  unjudged,
  type JudgedWell,
  type Missing,
  type Rule,
} from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import { aquifersOf, aquitardBetween, reachOf, type Aquifer, type Reach } from './aquifers.ts';
import { judgePipes } from './judgeScreens.ts';
import { certainPassages, type Passage } from './passages.ts';
import { screenRuns } from '../../../model/screenRuns.ts';

/** An aquifer that a screen of a string draws from, with the passage that leads there. */
interface Drawn {
  readonly aquifer: Aquifer;
  readonly passage: Passage;
  readonly reach: Reach;
}

function drawnBy({ model }: JudgedWell, string: StringModel): Drawn[] {
  const screens = screenRuns(string);
  const passages = certainPassages(model).filter(({ fromM, toM }) =>
    screens.some((screen) => cut(screen, fromM, toM)),
  );
  return aquifersOf(model.strata).flatMap((aquifer) =>
    passages
      .map((passage) => ({ aquifer, passage, reach: reachOf(model, passage, aquifer) }))
      .filter(({ reach }) => reach !== 'no')
      .slice(0, 1),
  );
}

function judgePair(
  well: JudgedWell,
  string: StringModel,
  upper: Drawn,
  lower: Drawn,
): { finding?: Finding; missing?: Missing } {
  if (upper.passage === lower.passage) return {};
  const limitM = figureOf(well, 'aquitardM');
  const aquitard = aquitardBetween(well.model.strata, upper.aquifer, lower.aquifer, limitM);
  if (!aquitard) return {};
  if (upper.reach === 'restUnknown' || lower.reach === 'restUnknown')
    return { missing: { what: 'restLevel', path: 'levels' } };
  const values = {
    string: stringLabel(well.record.strings?.[string.index], string.index),
    thicknessM: roundDepth(aquitard.toM - aquitard.fromM),
    limitM,
  };
  return { finding: broken('aquifers.screened', 'warning', string.path, values, aquitard) };
}

/**
 * No string has screens in two saturated aquifers with parting ground between: its inside joins
 * them, however well the annulus is closed. Common practice.
 */
export const aquifersScreened: Rule = {
  id: 'aquifers.screened',
  figures: ['aquitardM'],
  judge: (well) =>
    judgePipes(well, () => {
      const { strings, strata } = well.model;
      const screened = strings.filter((string) => screenRuns(string).length > 1);
      if (screened.length === 0) return notApplicable;
      if (strata.length === 0) return unjudged({ what: 'log', path: 'log' });
      const said = screened.flatMap((string) => {
        const drawn = drawnBy(well, string);
        return drawn.slice(1).map((lower, at) => judgePair(well, string, drawn[at]!, lower));
      });
      return judged(
        said.flatMap(({ finding }) => finding ?? []),
        said.flatMap(({ missing }) => missing ?? []),
      );
    }),
};
