import type { Finding } from '../base/finding.ts';
import type { DepthM } from '../base/units.ts';
import { tapeToleranceM } from './bore.ts';
import { found } from './findings.ts';
import { gapsIn } from './range.ts';
import type { PieceModel, StringModel, Stratum } from './wellModel.ts';

/** Millimetres: pipes of one nominal size differ by less. */
const sameSizeMm = 1;

type Label = string | number;

function differ(a: number | undefined, b: number | undefined): boolean {
  return a !== undefined && b !== undefined && Math.abs(a - b) > sameSizeMm;
}

/** Whether two pieces, one standing on the other, have ends of one size. */
function checkJoint(upper: PieceModel, lower: PieceModel, string: Label): Finding[] {
  const [lowerMm, upperMm] = [lower.upperOutsideMm, upper.outsideMm];
  if (lower.kind === 'cap' || upper.kind === 'cap') return [];
  if (lowerMm === undefined || upperMm === undefined || !differ(lowerMm, upperMm)) return [];
  const at = { fromM: lower.topM };
  if (lower.kind === 'reducer' || upper.kind === 'reducer') {
    const ofUpper = upper.kind === 'reducer';
    const [reducerMm, neighbourMm] = ofUpper ? [upperMm, lowerMm] : [lowerMm, upperMm];
    const { path } = ofUpper ? upper : lower;
    return [found('string.reducerMisfit', path, { string, reducerMm, neighbourMm }, at)];
  }
  return [found('string.stepWithoutReducer', upper.path, { string, lowerMm, upperMm }, at)];
}

function checkScreens(
  { pieces }: StringModel,
  strata: readonly Stratum[],
  string: Label,
): Finding[] {
  const screens = pieces.filter(({ kind }) => kind === 'screen');
  return screens.flatMap(({ topM, bottomM, path }) => {
    const above =
      topM < 0
        ? [found('screen.aboveGround', path, { string }, { fromM: topM, toM: bottomM })]
        : [];
    const bare = strata.length > 0 && bottomM > 0 ? gapsIn(strata, Math.max(topM, 0), bottomM) : [];
    return [...above, ...bare.map((gap) => found('screen.noStratum', path, { string }, gap))];
  });
}

/** How a string fits together, and how it fits the hole and the log. */
export function checkFittings(
  string: StringModel,
  strata: readonly Stratum[],
  holeM: DepthM | undefined,
  label: Label,
): Finding[] {
  const joints = string.pieces.flatMap((upper, at) => {
    const lower = string.pieces[at + 1];
    return lower ? checkJoint(upper, lower, label) : [];
  });
  const { bottomM, path } = string;
  const below =
    holeM !== undefined && bottomM - holeM > tapeToleranceM
      ? [
          found(
            'string.belowHole',
            path,
            { string: label, bottomM, depthM: holeM },
            { fromM: holeM, toM: bottomM },
          ),
        ]
      : [];
  return [...joints, ...below, ...checkScreens(string, strata, label)];
}
