import { z } from 'zod';
import { annulus } from './annulus.ts';
import { bore } from './bore.ts';
import { explanations } from './explanations.ts';
import { chapter, text } from './fields.ts';
import { headworks, marks, pump } from './headworks.ts';
import { identity } from './identity.ts';
import { layingOut } from './layingOut.ts';
import { log } from './log.ts';
import { photos } from './photos.ts';
import { disinfection, quality } from './quality.ts';
import { samples } from './samples.ts';
import { site } from './site.ts';
import { strings } from './strings.ts';
import { development, levels, strikes, tests } from './water.ts';

/** Rises by one with every change of shape; see migrations.ts. */
export const currentVersion = 1;

/** All that was measured and written of one well. Absent means not known. */
export const wellRecord = chapter({
  schemaVersion: z.literal(currentVersion).describe('Version of this shape.'),
  identity: identity.optional(),
  site: site.optional(),
  bore: bore.optional(),
  samples: samples.optional(),
  log: log.optional(),
  layingOut: layingOut.optional(),
  strings: strings.optional(),
  annulus: annulus.optional(),
  headworks: headworks.optional(),
  levels: levels.optional(),
  strikes: strikes.optional(),
  development: development.optional(),
  tests: tests.optional(),
  quality: quality.optional(),
  disinfection: disinfection.optional(),
  pump: pump.optional(),
  photos: photos.optional(),
  explanations: explanations.optional(),
  marks: marks.optional(),
  notes: text('Anything that stands nowhere else.'),
}).describe('A well’s record. Depths in metres below ground level, small sizes in millimetres.');

export type WellRecord = z.infer<typeof wellRecord>;
