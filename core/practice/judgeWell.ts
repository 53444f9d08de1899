import type { Finding } from '../base/finding.ts';
import type { WellModel } from '../model/wellModel.ts';
import type { WellRecord } from '../record/schema.ts';
import type { Practice } from './practice.ts';
import { rules } from './rules/index.ts';
import type { WaterResults } from './rules/results.ts';
import type { Rule, Verdict } from './rules/rule.ts';

/** What one rule says. */
export interface RuleVerdict extends Verdict {
  readonly rule: Rule;
}

/** A well judged by a practice. */
export interface Judgement {
  readonly practice: Practice;
  readonly verdicts: readonly RuleVerdict[];
  /** What rules found, in the order of the rules. */
  readonly findings: readonly Finding[];
}

/**
 * Judges a resolved record by every rule that the practice asks for. Rules on results do not apply
 * where none are handed in. Never throws for field data.
 */
export function judgeWell(
  record: WellRecord,
  model: WellModel,
  practice: Practice,
  results?: WaterResults,
): Judgement {
  const verdicts = rules
    .filter(({ id }) => !practice.without.includes(id))
    .map((rule) => ({ rule, ...rule.judge({ record, model, practice, results }) }));
  return { practice, verdicts, findings: verdicts.flatMap(({ findings }) => findings) };
}
