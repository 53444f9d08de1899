import { z } from 'zod';
import { record, revision, wellId, type ArgumentsOf } from './areas.ts';

export const wellsArguments = {
  'wells.list': z.strictObject({ search: z.string().max(200).exactOptional() }),
  'wells.open': z.strictObject({ id: wellId }),
  'wells.openRevision': z.strictObject({ id: wellId, revision }),
  'wells.save': z.strictObject({ id: wellId, revision, record }),
  'wells.create': z.strictObject({ record }),
  'wells.revisions': z.strictObject({ id: wellId }),
} satisfies ArgumentsOf<'wells'>;
