import type { DepthM, Metres } from '../../base/units.ts';
import { wholePieces } from './wholePieces.ts';
import { pumpAssumptions } from './assumptions.ts';
import { givenOrAssumed, type PumpBasis } from './basis.ts';
import type { PumpKindData, PumpPartId } from './pumpKind.ts';
import type { Intake, PumpPart } from './ranking.ts';

/** Pipes and rods of one length each, as many as reach. */
function pieces(id: PumpPartId, lengthM: Metres): PumpPart {
  const eachM = pumpAssumptions.pipeM.value;
  return { id, lengthM, count: wholePieces(lengthM, eachM), eachM };
}

/** A part for an intake at a depth with the outlet above ground; both ways round for a rope. */
function partOf(id: PumpPartId, intakeM: Metres, outletM: Metres): PumpPart {
  const riserM = intakeM + outletM;
  const { ropeOverM, cableOverM, washerSpacingM } = pumpAssumptions;
  const loopM = 2 * riserM + ropeOverM.value;
  switch (id) {
    case 'riserPipe':
    case 'pumpRod':
      return pieces(id, riserM);
    case 'rope':
      return { id, lengthM: loopM };
    case 'washers':
      return { id, count: wholePieces(loopM, washerSpacingM.value), eachM: washerSpacingM.value };
    case 'cable':
      return { id, lengthM: riserM + cableOverM.value };
    case 'safetyRope':
    case 'bucketRope':
      return { id, lengthM: riserM + ropeOverM.value };
  }
}

/**
 * What leads from the intake to the surface. A bucket's rope reaches the foot. None where the depth
 * is not known.
 */
export function partsOf(
  kind: PumpKindData,
  basis: PumpBasis,
  intake: Intake | undefined,
): PumpPart[] {
  const depthM = kind.id === 'bucketAndWindlass' ? basis.footM : intake?.hangsIn?.fromM;
  if (depthM === undefined) return [];
  const outletM = givenOrAssumed(basis.inputs, 'outletM').value;
  return partsAtDepth(kind, depthM, outletM);
}

/** The same for a pump whose intake, or bucket, is known to hang at a depth. */
export function partsAtDepth(
  kind: PumpKindData,
  depthM: DepthM,
  outletM: Metres = pumpAssumptions.outletM.value,
): PumpPart[] {
  return kind.parts.map((id) => partOf(id, depthM, outletM));
}
