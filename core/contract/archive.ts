import { z } from 'zod';
import type { ArgumentsOf } from './areas.ts';

export const archiveArguments = {
  'archive.state': z.strictObject({}),
  'archive.check': z.strictObject({}),
} satisfies ArgumentsOf<'archive'>;
