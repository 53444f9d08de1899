import { known } from '../../base/known.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { Practice } from '../../practice/practice.ts';
import { givesWater } from '../../practice/rules/stage.ts';
import type { WellRecord } from '../../record/schema.ts';
import { readBasis, type PumpBasis } from './basis.ts';
import { cautionsOf } from './cautionsOf.ts';
import { joined, type Aspect } from './judge/aspect.ts';
import { judgeByHand } from './judge/byHand.ts';
import { judgeByMotor } from './judge/byMotor.ts';
import { judgeCasing } from './judge/casing.ts';
import { intakeOf, judgeIntake } from './judge/intake.ts';
import { judgeLift } from './judge/lift.ts';
import { liftOf, needOf } from './judge/need.ts';
import { judgeCorrosion, judgeCover, judgeRepair } from './judge/upkeep.ts';
import { pumpKinds } from './kinds.ts';
import { inOrder } from './order.ts';
import { partsOf } from './partsOf.ts';
import { soundInputs } from './soundInputs.ts';
import type { PumpKindData } from './pumpKind.ts';
import type {
  KindJudgement,
  PumpInputs,
  PumpMissing,
  PumpRanking,
  PumpVerdict,
} from './ranking.ts';

function once(missing: readonly PumpMissing[]): PumpMissing[] {
  return [...new Map(missing.map((one) => [one.what, one])).values()];
}

function isRuledOut({ reasons }: Aspect): boolean {
  return reasons.some(({ effect }) => effect === 'rulesOut');
}

/**
 * One reason that rules out is enough, whatever else is not known; else nothing can be said while
 * something is missing; else one doubt makes it doubtful.
 */
function verdictOf(aspect: Aspect): PumpVerdict {
  if (isRuledOut(aspect)) return 'ruledOut';
  if (aspect.missing.length > 0) return 'cantSay';
  return aspect.reasons.some(({ effect }) => effect === 'doubts') ? 'doubtful' : 'possible';
}

/** A kind that does not reach the water serves nobody, and nothing of it is reckoned. */
function judgeKind(kind: PumpKindData, basis: PumpBasis): KindJudgement {
  const lift = judgeLift(kind, basis);
  const intake = isRuledOut(lift) ? undefined : intakeOf(kind, basis);
  const service = () =>
    kind.drive === 'hand' ? judgeByHand(kind, basis) : judgeByMotor(kind, basis, intake);
  const reaching = () => [
    judgeIntake(kind, basis, intake),
    judgeCasing(kind, basis, intake?.hangsIn?.fromM),
    service(),
  ];
  const whole = joined([
    lift,
    ...(isRuledOut(lift) ? [] : reaching()),
    judgeCorrosion(kind, basis),
    judgeRepair(kind, basis),
    judgeCover(kind),
  ]);
  return {
    kind: kind.id,
    verdict: verdictOf(whole),
    reasons: whole.reasons,
    missing: once(whole.missing),
    quantities: whole.quantities,
    ...known({ intake }),
    parts: isRuledOut(lift) ? [] : partsOf(kind, basis, intake),
    cautions: cautionsOf(kind, basis, intake),
  };
}

/**
 * Generic kinds of pump for a well, the most suitable first, each with why. It chooses between
 * kinds, never between makes; who answers for the well takes the choice, by local rules. A well
 * that was given up takes no pump.
 */
export function rankPumps(
  record: WellRecord,
  model: WellModel,
  practice: Practice,
  inputs: PumpInputs = {},
): PumpRanking {
  if (!givesWater(record)) return { kinds: [], quantities: [], missing: [] };
  const read = readBasis(record, model, practice, soundInputs(inputs));
  const basis: PumpBasis = { ...read, ...known({ lift: liftOf(read), need: needOf(read) }) };
  const kinds = inOrder(pumpKinds.map((kind) => judgeKind(kind, basis)));
  return {
    kinds,
    quantities: [basis.lift, basis.need].filter((one) => one !== undefined),
    missing: once(kinds.flatMap(({ missing }) => missing)),
  };
}
