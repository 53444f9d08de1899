import type { Finding } from '../base/finding.ts';
import type { Explanation } from './explanations.ts';

type Values = Finding['values'];

function areSame(left: Values, right: Values): boolean {
  const keys = Object.keys(left);
  return keys.length === Object.keys(right).length && keys.every((key) => left[key] === right[key]);
}

/** Where a finding's explanation stands among those of a record; -1 where it has none. */
export function explanationAt(
  finding: Finding,
  explanations: readonly Explanation[] | undefined,
): number {
  return (explanations ?? []).findIndex(
    ({ code, path, values }) =>
      code === finding.code && path === finding.path && areSame(values ?? {}, finding.values),
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
