import type { Finding, Severity } from '../../base/finding.ts';
import type { RecordPath } from '../../base/recordPath.ts';
import type { Stretch } from '../../model/findings.ts';
import { casingCodes } from './casing/codes.ts';
import { coverCodes } from './cover/codes.ts';
import { serviceCodes } from './service/codes.ts';
import { waterCodes } from './water/codes.ts';

/** Every rule with the values that its sentence may name besides `fromM` and `toM`. */
export const ruleCodes = { ...coverCodes, ...casingCodes, ...serviceCodes, ...waterCodes } as const;

export type RuleCode = keyof typeof ruleCodes;

type ValueNames<C extends RuleCode> = (typeof ruleCodes)[C] extends readonly (infer N)[]
  ? N & string
  : never;

/** Makes the finding of a rule that is broken. */
export function broken<C extends RuleCode>(
  code: C,
  severity: Severity,
  path: RecordPath,
  values: Readonly<Record<ValueNames<C>, string | number>>,
  stretch: Stretch | undefined = undefined,
): Finding {
  const { fromM, toM } = stretch ?? {};
  return {
    code,
    severity,
    path,
    ...(fromM === undefined ? {} : { fromM }),
    ...(toM === undefined ? {} : { toM }),
    values,
  };
}
