import { z } from 'zod';
import { languages } from '../base/language.ts';
import { wellId, type ArgumentsOf } from './areas.ts';
import { copyPlaces, takeChoices } from './copiesShape.ts';

/** A file's name without a folder: no call reaches outside the two folders. */
const fileName = z
  .string()
  .min(1)
  .max(255)
  .regex(/^[^/\\]+$/, 'a file is named without its folder');
const named = { place: z.enum(copyPlaces), fileName };

export const copiesArguments = {
  'copies.list': z.strictObject({}),
  'copies.make': z.strictObject({}),
  'copies.restore': z.strictObject({ fileName }),
  'copies.look': z.strictObject(named),
  'copies.compare': z.strictObject({ ...named, id: wellId, language: z.enum(languages) }),
  'copies.take': z.strictObject({
    ...named,
    choices: z.record(wellId, z.enum(takeChoices)),
  }),
} satisfies ArgumentsOf<'copies'>;
