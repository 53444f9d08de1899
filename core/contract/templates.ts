import { z } from 'zod';
import type { ArgumentsOf } from './areas.ts';

const name = z.string().trim().min(1).max(120);

/** What is wrong in a template is said by the one who reads it, fault by fault. */
const template = z.custom<object>(
  (value) => typeof value === 'object' && value !== null && !Array.isArray(value),
  'a template is a JSON object',
);

const logo = z.strictObject({ name: z.string().max(300), data: z.string() });

export const templatesArguments = {
  'templates.list': z.strictObject({}),
  'templates.put': z.strictObject({ name, template, logos: z.array(logo).max(12) }),
  'templates.choose': z.strictObject({ name: name.exactOptional() }),
  'templates.remove': z.strictObject({ name }),
} satisfies ArgumentsOf<'templates'>;
