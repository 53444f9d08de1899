import { z } from 'zod';
import { amount, chapter, day, depth, millimetres, oneOf, text } from './fields.ts';

export const drillingMethods = [
  'handAuger',
  'percussion',
  'sludging',
  'jetting',
  'rotaryJetting',
  'mudRotary',
  'airRotary',
  'downTheHoleHammer',
  'cableTool',
  'handDug',
  'other',
] as const;

const section = chapter({
  from: depth('Top of the section.'),
  to: depth('Foot of the section.'),
  diameter: millimetres('Diameter of the bit or hole.'),
  method: oneOf(drillingMethods, 'Where it differs from the rest.').optional(),
});

/** The hole itself. */
export const bore = chapter({
  method: oneOf(drillingMethods, 'How the hole was made.').optional(),
  rig: text('Rig or tool set.'),
  startedOn: day('First day of drilling.'),
  finishedOn: day('Last day of drilling.'),
  fluid: text('Drilling fluid.'),
  additive: text('What was added to it.'),
  fluidLost: amount('Fluid lost in all, litres.').optional(),
  sections: z.array(section).describe('Diameters by depth, from the ground down.').optional(),
  depthReached: depth('Deepest point drilled.').optional(),
  depthFound: depth('Depth found again by sounding before casing.').optional(),
  remark: text('Anything else.'),
}).describe('The hole itself.');

export type Bore = z.infer<typeof bore>;
export type BoreSection = z.infer<typeof section>;
export type DrillingMethod = (typeof drillingMethods)[number];
