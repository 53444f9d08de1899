import type { Rule } from '../rule.ts';
import { qualityAboveHealth } from './qualityAboveHealth.ts';
import { qualityUntested } from './qualityUntested.ts';
import { rateUntested } from './rateUntested.ts';
import { suitsCasing } from './suitsCasing.ts';
import { suitsFlow } from './suitsFlow.ts';
import { suitsLift } from './suitsLift.ts';

export const waterRules: readonly Rule[] = [
  suitsLift,
  suitsCasing,
  suitsFlow,
  rateUntested,
  qualityAboveHealth,
  qualityUntested,
];
