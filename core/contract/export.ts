import { z } from 'zod';
import { writtenFormats } from '../exchange/writtenFormats.ts';
import type { ArgumentsOf } from './areas.ts';
import { wellFilter } from './list.ts';

export const exportArguments = {
  'export.make': z.strictObject({
    filter: wellFilter,
    into: z.enum(writtenFormats),
    bom: z.boolean().exactOptional(),
  }),
} satisfies ArgumentsOf<'export'>;
