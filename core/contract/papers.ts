import { z } from 'zod';
import { languages } from '../base/language.ts';
import { wellId, type ArgumentsOf } from './areas.ts';

export const papersArguments = {
  'papers.asBuilt': z.strictObject({
    id: wellId,
    paper: z.enum(['A4', 'A3']),
    language: z.enum(languages).exactOptional(),
    attachRecord: z.boolean().exactOptional(),
  }),
  'papers.layingOut': z.strictObject({
    id: wellId,
    language: z.enum(languages).exactOptional(),
    attachRecord: z.boolean().exactOptional(),
  }),
} satisfies ArgumentsOf<'papers'>;
