import { z } from 'zod';
import { wellId, type ArgumentsOf } from './areas.ts';

export const backdropsArguments = {
  'backdrops.list': z.strictObject({}),
  'backdrops.add': z.strictObject({ fileName: z.string().max(300), text: z.string() }),
  'backdrops.remove': z.strictObject({ id: wellId }),
} satisfies ArgumentsOf<'backdrops'>;
