import type { Finding, Severity } from '../../core/base/finding.ts';
import type { RecordPath } from '../../core/base/recordPath.ts';
import { sayFinding } from '../../core/practice/catalogue.ts';
import { say } from '../parts/words.ts';
import { speech } from '../state/language.svelte.ts';
import { liesIn } from '../state/selection.ts';

/** The gravest first. */
export const severities = ['error', 'warning', 'note'] as const satisfies readonly Severity[];

/** A finding as it is said beside what it speaks of: how grave it is, and what is so. */
export interface SaidFinding {
  readonly severity: Severity;
  readonly path: RecordPath;
  readonly said: string;
}

/** One and the same list, so that a row on which nothing was found is seen not to have changed. */
const nothing: readonly SaidFinding[] = [];

/** What was found on a part of the record, the gravest first, in the language in use. */
export function findingsAt(findings: readonly Finding[], base: RecordPath): readonly SaidFinding[] {
  const here = findings.filter(({ path }) => liesIn(path, base));
  if (here.length === 0) return nothing;
  return here
    .toSorted((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity))
    .map((finding) => {
      const { severity, path } = finding;
      const { sentence } = sayFinding(finding, speech.language);
      return { severity, path, said: `${say.findings.severity[severity]}: ${sentence}` };
    });
}

export function worstOf(found: readonly SaidFinding[]): Severity | undefined {
  return found[0]?.severity;
}
