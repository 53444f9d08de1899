import { z } from 'zod';
import {
  amount,
  chapter,
  count,
  depth,
  flag,
  metres,
  millimetres,
  oneOf,
  percent,
  signedMetres,
  text,
} from './fields.ts';

export const componentKinds = ['cap', 'sump', 'screen', 'plain', 'reducer'] as const;

const component = chapter({
  kind: oneOf(componentKinds, 'What it is.'),
  count: count('How many alike, one on the other; 1 where absent.').optional(),
  material: text('Pipe material, as in uPVC or steel.'),
  outside: millimetres('Outside diameter.').optional(),
  wall: millimetres('Wall thickness.').optional(),
  inside: millimetres('Inside diameter; of a reducer the narrower.').optional(),
  upperOutside: millimetres('Reducer: outside diameter at its upper end.').optional(),
  length: metres('Length of one, end to end, with its bell.').optional(),
  joint: text('Joint, as in glued bell or threaded.'),
  insertion: metres(
    'How far this piece goes into the one below, or its bell takes the one below.',
  ).optional(),
  slotWidth: millimetres('Screen: width of a slot.').optional(),
  slotSpacing: millimetres('Screen: distance from slot to slot along the pipe.').optional(),
  slotRows: count('Screen: rows of slots round the pipe.').optional(),
  openArea: percent('Screen: open area, per cent.').optional(),
  centralisers: z
    .array(metres('Height of a centraliser above the lower end of the piece.'))
    .describe('Where centralisers sit on the piece.')
    .optional(),
  remark: text('Anything else.'),
});

const setting = z.discriminatedUnion('by', [
  chapter({
    by: z.literal('bottom').describe('Set by its lower end.'),
    depth: depth('Depth of the string’s lower end.'),
  }),
  chapter({
    by: z.literal('stickUp').describe('Set by its top.'),
    height: signedMetres('Top above ground.'),
  }),
]);

const string = chapter({
  name: text('What the string is called on this well.'),
  components: z.array(component).describe('The tally, counted from the bottom.'),
  set: setting.describe('What fixed the string: its lower end or its stick-up.').optional(),
  measuredDepth: depth('Depth of the lower end, measured after setting.').optional(),
  rope: flag('A retrieval rope was left on the string.'),
  weightSet: amount('Weight hung on it while setting, kilograms.').optional(),
  remark: text('Anything else.'),
});

/** Casing strings, the first set first. */
export const strings = z.array(string).describe('Casing strings, the first set first.');

export type CasingString = z.infer<typeof string>;
export type Component = z.infer<typeof component>;
export type ComponentKind = (typeof componentKinds)[number];
export type Setting = z.infer<typeof setting>;
