import type { Finding } from '../../../base/finding.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { covers, cut, roundDepth, type Range } from '../../../model/range.ts';
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
import { certainPassages, possiblePassages, type Passage } from './passages.ts';

/** Two aquifers with the ground that parts them. */
interface Parted {
  readonly upper: Aquifer;
  readonly lower: Aquifer;
  readonly aquitard: Range;
}

function partedIn(well: JudgedWell): Parted[] {
  const { strata } = well.model;
  const aquifers = aquifersOf(strata);
  return aquifers.slice(1).flatMap((lower, at) => {
    const upper = aquifers[at]!;
    const aquitard = aquitardBetween(strata, upper, lower, figureOf(well, 'aquitardM'));
    return aquitard ? [{ upper, lower, aquitard }] : [];
  });
}

/** Whether a passage leads from one aquifer into the other. */
function leads({ model }: JudgedWell, passage: Passage, { upper, lower }: Parted): Reach {
  const between = { fromM: upper.toM - tapeToleranceM, toM: lower.fromM + tapeToleranceM };
  if (!covers(passage, between)) return 'no';
  const reached = [upper, lower].map((aquifer) => reachOf(model, passage, aquifer));
  if (reached.includes('no')) return 'no';
  return reached.includes('restUnknown') ? 'restUnknown' : 'yes';
}

function findingOf(well: JudgedWell, { aquitard }: Parted, { conduits }: Passage): Finding {
  const { fromM, toM } = aquitard;
  const through = conduits.find((conduit) => cut(conduit, fromM, toM)) ?? conduits[0]!;
  const values = {
    fill: through.kind,
    thicknessM: roundDepth(toM - fromM),
    limitM: figureOf(well, 'aquitardM'),
  };
  return broken('aquifers.joined', 'warning', through.path, values, aquitard);
}

function judgeParted(well: JudgedWell, parted: Parted): { finding?: Finding; missing?: Missing } {
  const certain = certainPassages(well.model);
  const joining = certain.find((passage) => leads(well, passage, parted) === 'yes');
  if (joining) return { finding: findingOf(well, parted, joining) };
  if (certain.some((passage) => leads(well, passage, parted) === 'restUnknown'))
    return { missing: { what: 'restLevel', path: 'levels' } };
  const possible = possiblePassages(well.model).some(
    (passage) => leads(well, passage, parted) !== 'no',
  );
  return possible ? { missing: { what: 'fills', path: 'annulus', ...parted.aquitard } } : {};
}

/**
 * No pack, open annulus or screen runs from one saturated aquifer into another through ground
 * that parts them. Common practice.
 */
export const aquifersJoined: Rule = {
  id: 'aquifers.joined',
  figures: ['aquitardM'],
  judge: (well) =>
    judgePipes(well, () => {
      if (well.model.strata.length === 0) return unjudged({ what: 'log', path: 'log' });
      const parted = partedIn(well);
      if (parted.length === 0) return notApplicable;
      const said = parted.map((one) => judgeParted(well, one));
      return judged(
        said.flatMap(({ finding }) => finding ?? []),
        said.flatMap(({ missing }) => missing ?? []),
      );
    }),
};
