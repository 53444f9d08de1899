import { z } from 'zod';
import type { ArgumentsOf } from './areas.ts';

/** What is wrong in a set is said by the one who reads it, fault by fault. */
const set = z.custom<object>(
  (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
  'a set of guideline values is a JSON object',
);

export const guidelinesArguments = {
  'guidelines.list': z.strictObject({}),
  'guidelines.put': z.strictObject({ set }),
  'guidelines.remove': z.strictObject({ id: z.string().min(1).max(64) }),
} satisfies ArgumentsOf<'guidelines'>;
