import type { RecordPath } from '../../../base/recordPath.ts';
import type { DepthM, Metres } from '../../../base/units.ts';
import { cut, roundDepth, type Range } from '../../../model/range.ts';
import type { StringModel } from '../../../model/wellModel.ts';
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
import { besideScreen } from './pack.ts';
import { judgeByDepth, type ScreenedString } from './screened.ts';

/** A stretch that no centraliser holds, and how long it may be. */
interface Loose extends Range {
  readonly mostM: Metres;
}

/**
 * How far from the next centraliser a stretch gets between two neighbours; at an end of the string
 * there is none beyond, which is infinity.
 */
function farthestM({ fromM, toM }: Range, upperM: DepthM, lowerM: DepthM): Metres {
  const atM = Math.max(fromM, Math.min(toM, (upperM + lowerM) / 2));
  return Math.min(atM - upperM, lowerM - atM);
}

/**
 * Where a stretch is not held: farther from the next centraliser than the middle between two may
 * be that stand at the spacing asked for.
 */
function looseIn(stretch: Range, centralisersM: readonly DepthM[], spacingM: Metres): Loose[] {
  const all = [-Infinity, ...centralisersM, Infinity];
  return all.slice(1).flatMap((lowerM, at) => {
    const upperM = all[at] ?? lowerM;
    const part = cut(stretch, upperM, lowerM);
    if (!part || !isOver(farthestM(part, upperM, lowerM), spacingM / 2)) return [];
    const isBetween = Number.isFinite(upperM) && Number.isFinite(lowerM);
    return [
      {
        fromM: Number.isFinite(upperM) ? upperM : stretch.fromM,
        toM: Number.isFinite(lowerM) ? lowerM : stretch.toM,
        mostM: isBetween ? spacingM : spacingM / 2,
      },
    ];
  });
}

/** From the top of each pack that stands round a screen to the foot of the screens in it. */
function packedStretches(well: JudgedWell, { string, runs }: ScreenedString): Range[] {
  const stretches = new Map<DepthM, Range>();
  for (const run of runs)
    for (const pack of besideScreen(well, string, run).packs) {
      const fromM = Math.max(pack.fromM, string.topM);
      stretches.set(fromM, { fromM, toM: Math.min(pack.toM, run.toM) });
    }
  return [...stretches.values()];
}

/** The row of the tally in the middle of a stretch. */
function rowIn({ pieces, path }: StringModel, { fromM, toM }: Range): RecordPath {
  const middleM = (fromM + toM) / 2;
  return pieces.find(({ topM, bottomM }) => topM <= middleM && middleM < bottomM)?.path ?? path;
}

function judgeString(well: JudgedWell, screened: ScreenedString): Verdict {
  const { string, label, runs } = screened;
  const stretches = packedStretches(well, screened);
  const untold = runs.flatMap((run) => besideScreen(well, string, run).untold);
  if (stretches.length === 0) return untold.length > 0 ? unjudged(...untold) : notApplicable;
  const spacingM = figureOf(well, 'centraliserSpacingM');
  const found = string.pieces.flatMap((piece) => piece.centralisersM).sort((a, b) => a - b);
  const say = ({ fromM, toM, mostM }: Loose) => {
    const values = { string: label, gapM: roundDepth(toM - fromM), mostM };
    const row = rowIn(string, { fromM, toM });
    return broken('centraliser.spacing', 'warning', row, values, { fromM, toM });
  };
  if (found.length > 0) {
    const loose = stretches.flatMap((stretch) => looseIn(stretch, found, spacingM));
    // A gap that reaches through two packs is one gap.
    const gaps = new Map(loose.map((gap) => [gap.fromM, gap]));
    return judged([...gaps.values()].map(say));
  }
  return well.record.identity?.state === 'laidOut'
    ? judged(stretches.map((stretch) => say({ ...stretch, mostM: spacingM })))
    : unjudged({ what: 'centralisers', path: string.path });
}

/**
 * Centralisers hold the casing in the middle where gravel is poured, at both ends of the screen
 * and between. A plan without any has none; of a built well that has none written, nobody knows.
 */
export const centralisers: Rule = {
  id: 'centraliser.spacing',
  figures: ['centraliserSpacingM'],
  judge: (well) => judgeByDepth(well, (screened) => judgeString(well, screened)),
};
