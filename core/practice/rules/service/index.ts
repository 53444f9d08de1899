import type { Rule } from '../rule.ts';
import { datesOrder } from './datesOrder.ts';

export const serviceRules: readonly Rule[] = [datesOrder];
