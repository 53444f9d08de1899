import { z } from 'zod';

/** The kinds of field that chapters are made of. Every field may be absent: unknown is not zero. */

export const text = (says: string) => z.string().describe(says).optional();

/** Metres below ground level, positive down. */
export const depth = (says: string) =>
  z.number().describe(`${says} Metres below ground level, positive down.`);

export const metres = (says: string) => z.number().min(0).describe(`${says} Metres.`);

export const millimetres = (says: string) => z.number().min(0).describe(`${says} Millimetres.`);

export const amount = (says: string) => z.number().min(0).describe(says);

export const count = (says: string) => z.number().int().min(0).describe(says);

export const flag = (says: string) => z.boolean().describe(says).optional();

/** A calendar day, ISO 8601. */
export const day = (says: string) => z.iso.date().describe(`${says} YYYY-MM-DD.`).optional();

/** A moment, ISO 8601 with offset, to the minute or second. */
export const moment = (says: string) =>
  z.iso
    .datetime({ offset: true, local: false })
    .describe(`${says} ISO 8601 with offset.`)
    .optional();

/** One of a closed list of our own or the trade's words. */
export const oneOf = <const T extends readonly [string, ...string[]]>(list: T, says: string) =>
  z.enum(list).describe(says);

/** An object that keeps the keys it does not know, so that a newer file loses nothing. */
export const chapter = z.looseObject;
