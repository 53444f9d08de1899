import type { PumpAssumptionId } from '../assumptions.ts';
import type { PumpPartId, RankedKind, RepairLevel } from '../pumpKind.ts';
import type {
  CautionCode,
  IntakePlace,
  PumpInputId,
  PumpMissingWhat,
  PumpQuantityId,
  PumpUnit,
  PumpVerdict,
  ReasonCode,
} from '../ranking.ts';

/**
 * What a choice of pump says in one language. `{name}` stands for a value; its unit is written
 * beside it.
 */
export interface PumpWords {
  readonly kinds: Readonly<Record<RankedKind, string>>;
  readonly verdicts: Readonly<Record<PumpVerdict, string>>;
  /** A sentence each. */
  readonly reasons: Readonly<Record<ReasonCode, string>>;
  readonly cautions: Readonly<Record<CautionCode, string>>;
  /** What is lacking, as in a list. */
  readonly missing: Readonly<Record<PumpMissingWhat, string>>;
  readonly inputs: Readonly<Record<PumpInputId, string>>;
  readonly quantities: Readonly<Record<PumpQuantityId, string>>;
  readonly units: Readonly<Record<PumpUnit, string>>;
  readonly assumptions: Readonly<Record<PumpAssumptionId, string>>;
  readonly parts: Readonly<Record<PumpPartId, string>>;
  /** As within a sentence. */
  readonly repairs: Readonly<Record<RepairLevel, string>>;
  readonly places: Readonly<Record<IntakePlace, string>>;
  /** What no ranking may leave unsaid. */
  readonly disclaimer: string;
}
