import { z } from 'zod';
import {
  amount,
  chapter,
  day,
  depth,
  flag,
  metres,
  millimetres,
  oneOf,
  percent,
  text,
} from './fields.ts';

/** What stands at the surface. */
export const headworks = chapter({
  padLength: metres('Concrete pad, one way.').optional(),
  padWidth: metres('Concrete pad, the other way.').optional(),
  padThickness: metres('Thickness of the pad.').optional(),
  casingAboveGround: metres('Top of the casing above ground, measured.').optional(),
  drainLength: metres('Drain from the pad.').optional(),
  drainSlope: percent('Slope of the drain, per cent.').optional(),
  soakaway: text('Soakaway or other end of the drain.'),
  fence: text('Fence.'),
  plate: flag('A plate with number and depths is fixed.'),
  builtOn: day('When.'),
  remark: text('Anything else.'),
}).describe('What stands at the surface.');

export const pumpKinds = [
  'ropeAndWasher',
  'directAction',
  'deepwellLever',
  'extraDeepLever',
  'suction',
  'electricSubmersible',
  'solarSubmersible',
  'bucketAndWindlass',
  'other',
] as const;

/** The pump that serves the users. */
export const pump = chapter({
  kind: oneOf(pumpKinds, 'Generic kind.').optional(),
  model: text('Model, as on its plate.'),
  serial: text('Serial number.'),
  intake: depth('Depth of the intake.').optional(),
  cylinderTop: depth('Depth of the top of the cylinder or pump body.').optional(),
  bodyDiameter: millimetres('Largest diameter in the casing.').optional(),
  riserDiameter: millimetres('Outside diameter of the riser.').optional(),
  riserMaterial: text('Material of the riser.'),
  rods: text('Rods.'),
  installedOn: day('When.'),
  rate: amount('Rate in use, cubic metres an hour.').optional(),
  outletHeight: metres('Spout, or inlet of the tank, above ground.').optional(),
  deliveryLength: metres('Pipe from the head of the well to the tank.').optional(),
  remark: text('Anything else.'),
}).describe('The pump that serves the users.');

export const signingRoles = ['supervisor', 'contractor', 'client', 'committee', 'witness'] as const;

const mark = chapter({
  role: oneOf(signingRoles, 'As what this person signs.'),
  name: text('Name in full.'),
  organisation: text('For whom.'),
  on: day('When.'),
  kind: oneOf(['typed', 'drawn', 'image'], 'How the mark was made.').optional(),
  strokes: z
    .array(z.array(z.tuple([z.number(), z.number()])))
    .describe('Drawn mark: strokes of points in a box 100 wide and 40 high.')
    .optional(),
  hash: text('SHA-256 of the picture of the mark, hexadecimal; the archive keeps it under it.'),
});

/** Who signed, as what, when. */
export const marks = z.array(mark).describe('Who signed, as what, when.');

export type Headworks = z.infer<typeof headworks>;
export type Pump = z.infer<typeof pump>;
export type PumpKind = (typeof pumpKinds)[number];
export type Mark = z.infer<typeof mark>;
