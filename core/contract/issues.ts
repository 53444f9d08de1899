import { z } from 'zod';
import { wellId, type ArgumentsOf } from './areas.ts';
import { paperWish } from './papers.ts';
import { signingRoles } from '../record/headworks.ts';

const number = z.number().int().min(1);
const fingerprint = z.string().regex(/^([0-9A-F]{2}:){31}[0-9A-F]{2}$/);
/** Long enough for a sentence; a file could otherwise be sent as one. */
const passphrase = z.string().max(1000);
const name = z.string().max(200);

export const issuesArguments = {
  'issues.list': z.strictObject({ id: wellId }),
  'issues.make': z.strictObject({ id: wellId, paper: paperWish }),
  'issues.pdf': z.strictObject({ id: wellId, number }),
  'issues.seal': z.strictObject({
    id: wellId,
    number,
    fingerprint,
    passphrase,
    role: z.enum(signingRoles),
    place: name.exactOptional(),
  }),
} satisfies ArgumentsOf<'issues'>;

export const identitiesArguments = {
  'identities.list': z.strictObject({}),
  'identities.make': z.strictObject({ name, organisation: name.exactOptional(), passphrase }),
  'identities.take': z.strictObject({ file: z.string(), passphrase }),
  'identities.remove': z.strictObject({ fingerprint }),
} satisfies ArgumentsOf<'identities'>;

export const sealsArguments = {
  'seals.read': z.strictObject({ pdf: z.string() }),
} satisfies ArgumentsOf<'seals'>;
