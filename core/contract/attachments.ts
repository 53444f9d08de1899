import { z } from 'zod';
import type { ArgumentsOf } from './areas.ts';

/** SHA-256, hexadecimal. */
const hash = z.string().regex(/^[0-9a-f]{64}$/, 'a hash is 64 hexadecimal digits');

export const attachmentsArguments = {
  'attachments.put': z.strictObject({ data: z.string(), copy: z.string().exactOptional() }),
  'attachments.get': z.strictObject({ hash }),
  'attachments.printCopy': z.strictObject({ hash }),
} satisfies ArgumentsOf<'attachments'>;
