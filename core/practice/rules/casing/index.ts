import type { Rule } from '../rule.ts';

export const casingRules: readonly Rule[] = [];
