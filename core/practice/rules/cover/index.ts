import type { Rule } from '../rule.ts';

export const coverRules: readonly Rule[] = [];
