import type { Finding } from '../../core/base/finding.ts';
import type { Trouble } from '../../core/record/trouble.ts';
import { sayFinding } from '../../core/practice/catalogue.ts';
import type { World } from './command.ts';

const isError = ({ severity }: Finding) => severity === 'error';

/** True where a part could not be read or the record contradicts itself. */
export function hasErrors(troubles: readonly Trouble[], findings: readonly Finding[]): boolean {
  return troubles.length > 0 || findings.some(isError);
}

/** Tells on standard error what a command worked around; true where there was something. */
export function tellErrors(
  of: string,
  troubles: readonly Trouble[],
  findings: readonly Finding[],
  { complain }: World,
): boolean {
  for (const { sentence } of troubles) complain(`${of}: ${sentence}`);
  for (const finding of findings.filter(isError))
    complain(`${of}: ${finding.path || 'record'}: ${sayFinding(finding).sentence}`);
  return hasErrors(troubles, findings);
}
