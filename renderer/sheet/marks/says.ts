import type { Finding } from '../../../core/base/finding.ts';
import { sayFinding } from '../../../core/practice/catalogue.ts';
import { say } from '../../parts/words.ts';
import { speech } from '../../state/language.svelte.ts';
import { metres } from '../hands/says.ts';

/** A finding's texts in the language in use. */
export function textOf(finding: Finding) {
  return sayFinding(finding, speech.language);
}

/** The depth or the stretch that a finding speaks of. */
export function depthsOf({ fromM = 0, toM }: Finding): string {
  return toM === undefined || toM === fromM
    ? metres(fromM)
    : say.hands.marks.range(metres(fromM), metres(toM));
}

/** A mark's name: how grave, where, and what. */
export function markName(finding: Finding): string {
  const severity = say.findings.severity[finding.severity];
  return say.hands.marks.name(severity, textOf(finding).title, depthsOf(finding));
}
