import type { Rule } from '../rule.ts';
import { sumpLength } from './sumpLength.ts';

export const casingRules: readonly Rule[] = [sumpLength];
