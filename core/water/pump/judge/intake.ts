import type { DepthM } from '../../../base/units.ts';
import { cellsBetween, roundDepth } from '../../../model/range.ts';
import { pumpAssumptions } from '../assumptions.ts';
import type { PumpBasis } from '../basis.ts';
import type { PumpKindData } from '../pumpKind.ts';
import type { Intake, IntakePlace, IntakeWindow } from '../ranking.ts';
import { lacks, says, speaksAgainst, speaksFor, type Aspect } from './aspect.ts';

/** Plain pipe between screens that is shorter gives a cylinder no room; common practice. */
const plainLeastM = 0.5;

/** Where a depth lies; none in a sump, which is there for what settles. */
function placeAt(depthM: DepthM, { string }: PumpBasis): IntakePlace | undefined {
  if (!string || depthM > string.bottomM || depthM < string.topM) return 'openHole';
  const here = string.pieces.find(({ topM, bottomM }) => topM <= depthM && depthM < bottomM);
  if (here?.kind === 'sump') return undefined;
  return here?.kind === 'screen' ? 'screen' : 'plain';
}

/** Stretches of one kind each between two depths, from the top down. */
function windowsBetween(fromM: DepthM, toM: DepthM, basis: PumpBasis): IntakeWindow[] {
  if (toM < fromM) return [];
  const { string } = basis;
  const bounds = string
    ? [string.topM, string.bottomM, ...string.pieces.flatMap((one) => [one.topM, one.bottomM])]
    : [];
  const inside = bounds.filter((one) => one > fromM && one < toM);
  const cells = fromM === toM ? [{ fromM, toM }] : cellsBetween([fromM, ...inside, toM]);
  return cells.reduce<IntakeWindow[]>((windows, cell) => {
    const where = placeAt((cell.fromM + cell.toM) / 2, basis);
    if (where === undefined) return windows;
    const last = windows.at(-1);
    if (last?.where !== where || last.toM !== cell.fromM) return [...windows, { ...cell, where }];
    return [...windows.slice(0, -1), { ...last, toM: cell.toM }];
  }, []);
}

function isRoomy({ fromM, toM, where }: IntakeWindow): boolean {
  return where === 'plain' && toM - fromM >= plainLeastM;
}

/**
 * Between which depths the intake may hang: under the water while pumping in the dry season, above
 * the foot, by the practice's margins; a submersible's motor hangs under its intake. None of a
 * bucket, and none where level or foot is not known.
 */
export function intakeOf(kind: PumpKindData, basis: PumpBasis): Intake | undefined {
  const { levels, footM, practice } = basis;
  const levelM = levels.dryPumpingM;
  if (kind.id === 'bucketAndWindlass' || basis.casingUntold) return undefined;
  if (levelM === undefined || footM === undefined) return undefined;
  const underLevelM = practice.figures.intakeUnderPumpingLevelM.value;
  const motorM = kind.drive === 'hand' ? 0 : pumpAssumptions.motorM.value;
  const aboveFootM = practice.figures.intakeAboveBottomM.value + motorM;
  const fromM = roundDepth(Math.max(0, levelM) + underLevelM);
  const windows = windowsBetween(fromM, roundDepth(footM - aboveFootM), basis);
  const hangsIn = windows.find(isRoomy) ?? windows[0];
  return {
    windows,
    ...(hangsIn ? { hangsIn } : {}),
    levelM,
    underLevelM,
    footM,
    aboveFootM,
  };
}

/** Whether there is room for an intake, and whether it is in plain pipe. */
export function judgeIntake(
  kind: PumpKindData,
  basis: PumpBasis,
  intake: Intake | undefined,
): Aspect {
  if (kind.id === 'bucketAndWindlass') return says();
  if (basis.casingUntold) return lacks({ what: 'strings', path: 'strings' });
  if (basis.footM === undefined) return lacks({ what: 'wellFoot', path: 'bore.depthReached' });
  if (!intake) return says();
  const { intakeUnderPumpingLevelM: under, intakeAboveBottomM: above } = basis.practice.figures;
  const { hangsIn, levelM, footM, underLevelM, aboveFootM } = intake;
  if (!hangsIn) {
    const values = { levelM, footM, underM: underLevelM, aboveM: aboveFootM };
    return says(speaksAgainst('intakeNoRoom', 'rulesOut', values, under.source, above.source));
  }
  const values = { fromM: hangsIn.fromM, toM: hangsIn.toM };
  const sources = [under.source, above.source];
  if (hangsIn.where === 'plain') return says(speaksFor('intakeFits', values, ...sources));
  const code = hangsIn.where === 'screen' ? 'intakeInScreen' : 'intakeInOpenHole';
  return says(speaksAgainst(code, 'doubts', values, ...sources));
}
