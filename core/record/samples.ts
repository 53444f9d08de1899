import { z } from 'zod';
import { chapter, depth, oneOf, text } from './fields.ts';
import { grainClasses, qualifiers } from './log.ts';
import { materials } from './materials.ts';

const sample = chapter({
  from: depth('Where what it holds begins.'),
  to: depth('Where what it holds ends.'),
  material: oneOf(materials, 'Principal material, as laid out.').optional(),
  qualifiers,
  grain: oneOf(grainClasses, 'Grain size within the principal material.').optional(),
  colour: text('Colour as seen, wet.'),
  label: text('What the bag says.'),
  remark: text('Anything else seen.'),
});

/** What was taken out of the hole and laid out, as a rule from each metre. */
export const samples = z
  .array(sample)
  .describe('Samples of the ground in the order in which they came up.');

export type GroundSample = z.infer<typeof sample>;
