import { z } from 'zod';
import { wellId, type ArgumentsOf } from './areas.ts';

export const papersArguments = {
  'papers.asBuilt': z.strictObject({ id: wellId, paper: z.enum(['A4', 'A3']) }),
} satisfies ArgumentsOf<'papers'>;
