import { z } from 'zod';
import { annulus } from './annulus.ts';
import {
  amount,
  chapter,
  count,
  day,
  depth,
  metres,
  millimetres,
  oneOf,
  percent,
  text,
} from './fields.ts';
import { strings } from './strings.ts';

const pipe = chapter({
  label: text('How the site tells it from others.'),
  kind: oneOf(['plain', 'screen'], 'Plain or slotted.'),
  count: count('How many alike lie on site; 1 where absent.').optional(),
  length: metres('Length of one, end to end, with its bell.').optional(),
  material: text('Pipe material, as in uPVC or steel.'),
  outside: millimetres('Outside diameter.').optional(),
  wall: millimetres('Wall thickness.').optional(),
  joint: text('Joint, as in glued bell or threaded.'),
  insertion: metres('How far a pipe goes into the bell of the next.').optional(),
  slotWidth: millimetres('Screen: width of a slot.').optional(),
  openArea: percent('Screen: open area, per cent.').optional(),
  remark: text('Anything else.'),
});

export const proposalKinds = ['safest', 'mostProductive', 'fewestCuts'] as const;

const proposal = chapter({
  kind: oneOf(proposalKinds, 'In what it was the best.').optional(),
  takenOn: day('When it was taken.'),
  practice: text('Practice that it was made by, with its version.'),
  strings: strings.optional(),
  annulus: annulus.optional(),
}).describe('The completion as it was proposed, kept beside what was built.');

/** What the completion is laid out from, before the hole closes. */
export const layingOut = chapter({
  rate: amount('Rate that the well is to give, cubic metres an hour.').optional(),
  drySeasonLevel: depth('Lowest rest level to be expected in the dry season.').optional(),
  seasonalSwing: metres(
    'Between the highest and the lowest rest level of a year, as people there tell it.',
  ).optional(),
  lowMonths: z
    .array(z.number().int().min(1).max(12))
    .describe('Months in which the water is at its lowest, 1 to 12.')
    .optional(),
  drawdown: metres('Drawdown to be expected at that rate.').optional(),
  stickUp: metres('Top of the casing to stand above ground.').optional(),
  grainMin: millimetres('Finest grain of the gravel on site.').optional(),
  grainMax: millimetres('Coarsest grain of the gravel on site.').optional(),
  pipes: z.array(pipe).describe('Pipes on site.').optional(),
  proposal: proposal.optional(),
  remark: text('Anything else.'),
}).describe('What the completion is laid out from, before the hole closes.');

export type LayingOut = z.infer<typeof layingOut>;
export type SitePipe = z.infer<typeof pipe>;
export type ProposalKind = (typeof proposalKinds)[number];
export type KeptProposal = z.infer<typeof proposal>;
