import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import { judgeWell } from '../../../../../core/practice/judgeWell.ts';
import type { WaterResults } from '../../../../../core/practice/rules/results.ts';
import type { Verdict } from '../../../../../core/practice/rules/rule.ts';
import type { RuleCode } from '../../../../../core/practice/rules/ruleCodes.ts';
import { record } from '../../../model/well.ts';
import type { Chapters } from '../service/judge.ts';

/** Results in which nothing is wrong and nothing lacks. */
export const nothingFound: WaterResults = { aboveHealth: [], unclear: [], missingTests: [] };

/** What one rule says of a record of these chapters, with results that are handed in. */
export function judgeHanded(id: RuleCode, chapters: Chapters, results?: WaterResults): Verdict {
  const well = record(chapters);
  const { verdicts } = judgeWell(well, resolveWell(well), practiceOf(well), results);
  const verdict = verdicts.find(({ rule }) => rule.id === id);
  if (!verdict) throw new Error(`No rule ${id}.`);
  const { applies, findings, missing } = verdict;
  return { applies, findings, missing };
}
