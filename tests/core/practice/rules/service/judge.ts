import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import { sayFinding } from '../../../../../core/practice/catalogue.ts';
import { practiceOf } from '../../../../../core/practice/choosePractice.ts';
import type { FigureId } from '../../../../../core/practice/figures.ts';
import { judgeWell } from '../../../../../core/practice/judgeWell.ts';
import type { RuleCode } from '../../../../../core/practice/rules/ruleCodes.ts';
import type { Verdict } from '../../../../../core/practice/rules/rule.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { record } from '../../../model/well.ts';

export type Chapters = Omit<WellRecord, 'schemaVersion'>;

/** What one rule says of a record of these chapters, by the general practice for its drilling. */
export function judge(id: RuleCode, chapters: Chapters): Verdict {
  const well = record(chapters);
  const { verdicts } = judgeWell(well, resolveWell(well), practiceOf(well));
  const verdict = verdicts.find(({ rule }) => rule.id === id);
  if (!verdict) throw new Error(`No rule ${id}.`);
  const { applies, findings, missing } = verdict;
  return { applies, findings, missing };
}

/** Paths of what a rule found, each with its severity. */
export function found(id: RuleCode, chapters: Chapters): string[] {
  return judge(id, chapters).findings.map(({ path, severity }) => `${severity} ${path}`);
}

/** What a rule missed, each with where it belongs. */
export function missed(id: RuleCode, chapters: Chapters): string[] {
  return judge(id, chapters).missing.map(({ what, path }) => `${what} ${path}`);
}

/** The English sentences of what a rule found. */
export function sentences(id: RuleCode, chapters: Chapters): string[] {
  return judge(id, chapters).findings.map((finding) => sayFinding(finding).sentence);
}

/** A rule that applies, finds nothing and misses nothing. */
export const met: Verdict = { applies: true, findings: [], missing: [] };
export const doesNotApply: Verdict = { applies: false, findings: [], missing: [] };

export const completed = { identity: { state: 'completed' } } as const;
export const laidOut = { identity: { state: 'laidOut' } } as const;
export const dry = { identity: { state: 'dry' } } as const;

/** A figure of the general practice for wells drilled by hand. */
export function generalFigure(id: FigureId): number {
  return practiceOf(record({})).figures[id].value;
}
