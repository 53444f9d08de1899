import type { PumpBasis } from './basis.ts';
import type { PumpKindData } from './pumpKind.ts';
import type { CautionCode, Intake } from './ranking.ts';

/** Whether water comes from above to the intake, so that none of it flows past the motor. */
function isUnderSlots({ string }: PumpBasis, intake: Intake | undefined): boolean {
  const depthM = intake?.hangsIn?.fromM;
  const screen = string?.pieces.find(({ kind }) => kind === 'screen');
  return depthM !== undefined && (!screen || depthM >= screen.topM);
}

function ofMotor(basis: PumpBasis, intake: Intake | undefined): CautionCode[] {
  return [
    'licensedElectrician',
    'dryRunGuard',
    'dipTube',
    'makersCurve',
    'storageTank',
    ...(isUnderSlots(basis, intake) ? (['coolingFlow'] as const) : []),
  ];
}

/** What to mind with a kind, in this well. */
export function cautionsOf(
  kind: PumpKindData,
  basis: PumpBasis,
  intake: Intake | undefined,
): CautionCode[] {
  const heavy = kind.repair.value !== 'caretaker';
  return [
    ...(kind.drive === 'hand' ? [] : ofMotor(basis, intake)),
    ...(heavy ? (['liftingGear'] as const) : []),
    ...(kind.closed ? [] : (['cover'] as const)),
    'cleanHands',
    'localRules',
  ];
}
