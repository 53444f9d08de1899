import type { Finding } from '../base/finding.ts';
import type { Explanation } from './explanations.ts';

/** The values of a finding, as an explanation keeps them. */
export function writeValues({ values }: Finding): string {
  return Object.keys(values)
    .sort((left, right) => (left < right ? -1 : 1))
    .map((name) => `${name}=${values[name]}`)
    .join('; ');
}

/** Where a finding's explanation stands among those of a record; -1 where it has none. */
export function explanationAt(
  finding: Finding,
  explanations: readonly Explanation[] | undefined,
): number {
  const written = writeValues(finding);
  return (explanations ?? []).findIndex(
    ({ code, path, values = '' }) =>
      code === finding.code && path === finding.path && values === written,
  );
}

/**
 * Why a finding remains. It holds for the finding as it was explained: where a value in its
 * sentence changes, it is to be explained anew.
 */
export function explanationOf(
  finding: Finding,
  explanations: readonly Explanation[] | undefined,
): string | undefined {
  const because = explanations?.[explanationAt(finding, explanations)]?.because?.trim();
  return because ? because : undefined;
}

/** Errors that nobody explained: with one of them, a paper is not issued. */
export function unexplained(
  findings: readonly Finding[],
  explanations: readonly Explanation[] | undefined,
): Finding[] {
  return findings.filter(
    (finding) => finding.severity === 'error' && explanationOf(finding, explanations) === undefined,
  );
}
