import { z } from 'zod';
import type { ArgumentsOf } from './areas.ts';

/** What is wrong in a practice is said by the one who reads it, fault by fault. */
const practice = z.custom<object>(
  (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
  'a practice is a JSON object',
);

export const practicesArguments = {
  'practices.list': z.strictObject({}),
  'practices.put': z.strictObject({ practice }),
  'practices.remove': z.strictObject({ id: z.string().min(1).max(64) }),
} satisfies ArgumentsOf<'practices'>;
