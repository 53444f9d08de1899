import type { Rule } from '../rule.ts';
import { datesOrder } from './datesOrder.ts';
import { samplesSparse } from './samplesSparse.ts';

export const serviceRules: readonly Rule[] = [datesOrder, samplesSparse];
