import { z } from 'zod';
import type { ArgumentsOf } from './areas.ts';

/** Letters of the largest print file in base64: 250 pages with photos. */
const largestPrint = 150 * 2 ** 20;

export const printingArguments = {
  'printing.ways': z.strictObject({}),
  'printing.print': z.strictObject({
    fileName: z.string().min(1).max(200),
    pdf: z.string().max(largestPrint),
    printer: z.string().min(1).max(200).exactOptional(),
  }),
} satisfies ArgumentsOf<'printing'>;
