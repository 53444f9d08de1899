import { z } from 'zod';
import { amount, chapter, depth, flag, millimetres, oneOf, percent, text } from './fields.ts';
import { materials } from './materials.ts';

export const grainClasses = [
  'fine',
  'fineToMedium',
  'medium',
  'mediumToCoarse',
  'coarse',
  'fineToCoarse',
] as const;

const qualifier = chapter({
  material: oneOf(materials, 'Second material, as in sandy or gravelly.'),
  degree: oneOf(['slightly', 'plain', 'very'], 'How much of it.').optional(),
});

export const qualifiers = z.array(qualifier).describe('Second materials.').optional();

const sievePoint = chapter({
  size: millimetres('Opening of the sieve.'),
  finer: percent('Share that passes, per cent by mass.'),
});

const interval = chapter({
  from: depth('Top of the interval.'),
  to: depth('Foot of the interval.'),
  material: oneOf(materials, 'Principal material.').optional(),
  qualifiers,
  grain: oneOf(grainClasses, 'Grain size within the principal material.').optional(),
  grainScheme: oneOf(['iso14688', 'wentworth'], 'Which scale the grain words follow.').optional(),
  colour: text('Colour as seen, wet.'),
  consistency: text('Consistency or density: soft, stiff, loose, dense.'),
  weathering: oneOf(
    ['fresh', 'slightly', 'moderately', 'highly', 'completely'],
    'Weathering of rock.',
  ).optional(),
  fractured: flag('Rock is fractured.'),
  moisture: oneOf(['dry', 'moist', 'wet', 'waterBearing'], 'Moisture or water.').optional(),
  boundary: oneOf(
    ['sharp', 'gradual', 'uncertain'],
    'How sharply the interval ends at its foot.',
  ).optional(),
  sampled: flag('A sample was taken and laid out.'),
  sampleLabel: text('What the bag says.'),
  minutesPerMetre: amount('Drilling time, minutes for each metre.').optional(),
  sieve: z.array(sievePoint).describe('Sieve curve of the sample.').optional(),
  remarks: text('Anything else seen.'),
  words: text('The description as somebody else wrote it, kept whole.'),
});

/** What the hole went through, from the ground down. */
export const log = z.array(interval).describe('What the hole went through, from the ground down.');

export type LogInterval = z.infer<typeof interval>;
export type GrainClass = (typeof grainClasses)[number];
