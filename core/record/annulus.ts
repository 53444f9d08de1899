import { z } from 'zod';
import { amount, chapter, count, depth, flag, millimetres, moment, oneOf, text } from './fields.ts';

export const fillKinds = [
  'gravelPack',
  'formationStabiliser',
  'claySeal',
  'bentonite',
  'cementGrout',
  'concrete',
  'backfill',
  'naturalCollapse',
  'open',
] as const;

const pour = chapter({
  at: moment('When.'),
  sacks: amount('Sacks poured since the sounding before.').optional(),
  litres: amount('Litres poured since the sounding before.').optional(),
  sounded: depth('Top of the fill, sounded afterwards.').optional(),
  remark: text('Anything else.'),
});

const fill = chapter({
  from: depth('Top of the fill.'),
  to: depth('Foot of the fill.'),
  fill: oneOf(fillKinds, 'What stands in the annulus.'),
  around: count('Index of the string that it surrounds; 0 where absent.').optional(),
  insideHole: flag('It fills the whole hole, with no string in it.'),
  sanitary: flag('It is the sanitary (surface) seal.'),
  grainMin: millimetres('Finest grain of a pack.').optional(),
  grainMax: millimetres('Coarsest grain of a pack.').optional(),
  waterCement: amount('Grout: water to cement by mass.').optional(),
  sacks: amount('Sacks poured.').optional(),
  sackMass: amount('Mass of a sack, kilograms.').optional(),
  litres: amount('Volume poured, litres.').optional(),
  pours: z.array(pour).describe('Pouring, step by step, each with its sounding.').optional(),
  placed: text('How it was placed.'),
  remark: text('Anything else.'),
});

/** What stands between the hole's wall and the casing, from the ground down. */
export const annulus = z
  .array(fill)
  .describe('What stands between the wall of the hole and the casing, from the ground down.');

export type AnnulusFill = z.infer<typeof fill>;
export type Pour = z.infer<typeof pour>;
export type FillKind = (typeof fillKinds)[number];
