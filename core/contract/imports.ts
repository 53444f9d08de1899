import { z } from 'zod';
import { encodings } from '../exchange/tables/decode.ts';
import type { ArgumentsOf } from './areas.ts';
import { largestFileText } from './attachmentsShape.ts';
import { wellChoices, type TableMapping } from './importsShape.ts';

/** What is wrong in a mapping is said by the one who reads it. */
const mapping = z.custom<TableMapping>(
  (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
  'a mapping is a JSON object',
);
const choice = z.enum(wellChoices);
const said = z.string().max(2000);
const name = z.string().min(1).max(100);

export const importsArguments = {
  'imports.open': z.strictObject({
    files: z
      .array(
        z.strictObject({ name: z.string().min(1).max(300), data: z.string().max(largestFileText) }),
      )
      .min(1)
      .max(100)
      .readonly(),
  }),
  'imports.rows': z.strictObject({
    table: z.number().int().min(0),
    encoding: z.enum(encodings).exactOptional(),
    delimiter: z.string().length(1).exactOptional(),
  }),
  'imports.look': z.strictObject({ mapping: mapping.exactOptional() }),
  'imports.bring': z.strictObject({
    mapping: mapping.exactOptional(),
    choices: z.strictObject({
      known: choice,
      single: z.record(z.string(), choice).exactOptional(),
    }),
    author: said.exactOptional(),
    reason: said.exactOptional(),
  }),
  'imports.stop': z.strictObject({}),
  'imports.close': z.strictObject({}),
  'imports.mappings': z.strictObject({}),
  'imports.keepMapping': z.strictObject({ name, mapping }),
  'imports.dropMapping': z.strictObject({ name }),
} satisfies ArgumentsOf<'imports'>;
