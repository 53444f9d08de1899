import type { Rule } from '../rule.ts';

export const serviceRules: readonly Rule[] = [];
