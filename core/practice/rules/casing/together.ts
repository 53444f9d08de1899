import type { Missing, Verdict } from '../rule.ts';

function once(missing: readonly Missing[]): Missing[] {
  return [...new Map(missing.map((one) => [`${one.what} ${one.path}`, one])).values()];
}

/** What a rule says of several parts of a well, as one; the same thing is missed but once. */
export function together(verdicts: readonly Verdict[]): Verdict {
  return {
    applies: verdicts.some(({ applies }) => applies),
    findings: verdicts.flatMap(({ findings }) => findings),
    missing: once(verdicts.flatMap(({ missing }) => missing)),
  };
}
