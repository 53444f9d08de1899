import { casingRules } from './casing/index.ts';
import { coverRules } from './cover/index.ts';
import type { Rule } from './rule.ts';
import { serviceRules } from './service/index.ts';
import { waterRules } from './water/index.ts';

/** Every rule, in the order in which findings are listed. */
export const rules: readonly Rule[] = [
  ...coverRules,
  ...casingRules,
  ...serviceRules,
  ...waterRules,
];
