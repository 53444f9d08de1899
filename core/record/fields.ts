import { z } from 'zod';
import { phrase, type Phrase } from './phrases/phrase.ts';

/** The page forbids making code from text, which the schema library would otherwise try. */
z.config({ jitless: true });

/** The kinds of field that chapters are made of. Every field may be absent: unknown is not zero. */

/** What to write into a field, for the sentence about one that cannot be read. */
export const hints = z.registry<{ readonly write: Phrase }>();

export const text = (says: string) =>
  z
    .string()
    .describe(says)
    .register(hints, { write: phrase('hintText') })
    .optional();

/** Metres below ground level, positive down. */
export const depth = (says: string) =>
  z
    .number()
    .describe(`${says} Metres below ground level, positive down.`)
    .register(hints, { write: phrase('hintDepth') });

export const metres = (says: string) =>
  z
    .number()
    .min(0)
    .describe(`${says} Metres.`)
    .register(hints, { write: phrase('hintMetres') });

/** Metres that may lie on either side of their datum. */
export const signedMetres = (says: string) =>
  z
    .number()
    .describe(`${says} Metres.`)
    .register(hints, { write: phrase('hintSignedMetres') });

export const millimetres = (says: string) =>
  z
    .number()
    .min(0)
    .describe(`${says} Millimetres.`)
    .register(hints, { write: phrase('hintMillimetres') });

export const amount = (says: string) =>
  z
    .number()
    .min(0)
    .describe(says)
    .register(hints, { write: phrase('hintAmount') });

export const percent = (says: string) =>
  z
    .number()
    .min(0)
    .max(100)
    .describe(says)
    .register(hints, { write: phrase('hintPercent') });

export const degrees = (from: number, to: number, says: string) =>
  z
    .number()
    .min(from)
    .max(to)
    .describe(says)
    .register(hints, { write: phrase('hintDegrees', { from, to }) });

export const count = (says: string) =>
  z
    .number()
    .int()
    .min(0)
    .describe(says)
    .register(hints, { write: phrase('hintCount') });

export const flag = (says: string) =>
  z
    .boolean()
    .describe(says)
    .register(hints, { write: phrase('hintFlag') })
    .optional();

export const id = (says: string) =>
  z
    .uuid()
    .describe(says)
    .register(hints, { write: phrase('hintId') })
    .optional();

/** A calendar day, ISO 8601. */
export const day = (says: string) =>
  z.iso
    .date()
    .describe(`${says} YYYY-MM-DD.`)
    .register(hints, { write: phrase('hintDay') })
    .optional();

/** The schema library's moments have seconds; a watch in the field is read to the minute. */
const toTheMinute = /^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d(Z|[+-]([01]\d|2[0-3]):[0-5]\d)$/;

/** A moment, ISO 8601 with offset, to the minute or second; a day where no time was written. */
export const moment = (says: string) =>
  z
    .union([
      z.iso.datetime({ offset: true, local: false }),
      z.string().regex(toTheMinute),
      z.iso.date(),
    ])
    .describe(`${says} ISO 8601 with offset, or the day alone where no time was written.`)
    .register(hints, { write: phrase('hintMoment') })
    .optional();

/** One of a closed list of our own or the trade's words. */
export const oneOf = <const T extends readonly [string, ...string[]]>(list: T, says: string) =>
  z.enum(list).describe(says);

/** An object that keeps the keys it does not know, so that a newer file loses nothing. */
export const chapter = z.looseObject;
