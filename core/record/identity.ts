import type { z } from 'zod';
import { chapter, id, oneOf, text } from './fields.ts';

export const wellStates = [
  'laidOut',
  'drilled',
  'completed',
  'dry',
  'abandonedAndSealed',
  'decommissioned',
] as const;

/** Who the well is and whose. */
export const identity = chapter({
  id: id('Never changes; made with the record.'),
  number: text('The well number or tag, unique in the programme.'),
  name: text('The name people use.'),
  programme: text('The programme that pays for a number of wells.'),
  contract: text('Contract or lot number.'),
  permit: text('Permit or start-notice number.'),
  client: text('Who the well is made for.'),
  contractor: text('Who drilled it.'),
  driller: text('The person in charge of the rig or crew.'),
  supervisor: text('The engineer who supervised and signs.'),
  purpose: text('Intended use.'),
  practice: text('Id of the practice that the well is judged by.'),
  guidelines: text('Id of the set of guideline values that water samples are compared with.'),
  state: oneOf(wellStates, 'How far the well has come.').optional(),
}).describe('Who the well is and whose.');

export type Identity = z.infer<typeof identity>;
export type WellState = (typeof wellStates)[number];
