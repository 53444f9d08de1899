import { z } from 'zod';
import { chapter, day, text } from './fields.ts';

const explanation = chapter({
  code: text('Code of the finding.'),
  path: text('Path of the field that it speaks of.'),
  values: text('Values that its sentence named when it was explained, as “name=value; …” by name.'),
  because: text('Why the well is to stay as it is, or why the record is right.'),
  by: text('Who explained it.'),
  on: day('When.'),
});

/** Why findings remain: what was looked at and is to stay. */
export const explanations = z.array(explanation).describe('Why findings remain.');

export type Explanation = z.infer<typeof explanation>;
