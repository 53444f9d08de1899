import { z } from 'zod';
import { wellId, type ArgumentsOf } from './areas.ts';

export const binArguments = {
  'bin.list': z.strictObject({}),
  'bin.put': z.strictObject({ id: wellId }),
  'bin.putBack': z.strictObject({ id: wellId }),
  'bin.empty': z.strictObject({ ids: z.array(wellId).readonly() }),
} satisfies ArgumentsOf<'bin'>;
