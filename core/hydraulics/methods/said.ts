import type { AssumptionCode, CheckCode } from '../codes.ts';
import type { Check, Said } from '../results.ts';

/** An assumption with the values that its sentence names. */
export function assumed(
  code: AssumptionCode,
  values: Readonly<Record<string, number>> = {},
): Said<AssumptionCode> {
  return { code, values };
}

export function check(
  code: CheckCode,
  holds: boolean,
  values: Readonly<Record<string, number>>,
): Check {
  return { code, holds, values };
}
