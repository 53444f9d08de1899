import type { Finding } from '../../base/finding.ts';
import type { WellModel } from '../../model/wellModel.ts';
import type { WellRecord } from '../../record/schema.ts';
import type { FigureId } from '../figures.ts';
import type { Practice } from '../practice.ts';
import type { Missing } from './missing.ts';
import type { WaterResults } from './results.ts';
import type { RuleCode } from './ruleCodes.ts';

export type { Missing } from './missing.ts';

/** A well with the practice that it is judged by. */
export interface JudgedWell {
  readonly record: WellRecord;
  readonly model: WellModel;
  readonly practice: Practice;
  /** Absent where nobody looked at the water and the pump. */
  readonly results?: WaterResults | undefined;
}

/** What a rule says of a well. It is met where it applies, finds nothing and misses nothing. */
export interface Verdict {
  /** False where the well has nothing that the rule speaks of, as screens of a dry hole. */
  readonly applies: boolean;
  readonly findings: readonly Finding[];
  readonly missing: readonly Missing[];
}

export interface Rule {
  readonly id: RuleCode;
  /** The figures of the practice that it compares with. */
  readonly figures: readonly FigureId[];
  judge(well: JudgedWell): Verdict;
}

/** A rule does not speak of such a well. */
export const notApplicable: Verdict = { applies: false, findings: [], missing: [] };

/** A rule that applies: what it found, and what it misses; met where both are empty. */
export function judged(findings: readonly Finding[], missing: readonly Missing[] = []): Verdict {
  return { applies: true, findings, missing };
}

/** A rule that cannot judge for want of these. */
export function unjudged(...missing: readonly Missing[]): Verdict {
  return { applies: true, findings: [], missing };
}

/** The value of a figure of the practice. */
export function figureOf({ practice }: JudgedWell, id: FigureId): number {
  return practice.figures[id].value;
}
