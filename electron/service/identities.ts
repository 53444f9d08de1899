import { ok, refused, type Result } from '../../core/base/result.ts';
import type { IdentityRow } from '../../core/contract/issuesShape.ts';
import { makeIdentity } from '../seal/makeIdentity.ts';
import { openPkcs12 } from '../seal/openPkcs12.ts';
import { openSigner } from '../seal/openSigner.ts';
import type { Signer } from '../seal/seal.ts';
import { reads, writes, type Handlers, type ServiceParts } from './handlers.ts';
import type { IdentityStore } from './identityStore.ts';

/** How long a certificate that the program makes is good for. */
const validYears = 5;

function rowOf({ fingerprint, name, organisation, validTo, selfSigned }: IdentityRow): IdentityRow {
  const forWhom = organisation === undefined ? {} : { organisation };
  return { fingerprint, name, ...forWhom, validTo, selfSigned };
}

const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');

async function keep(
  store: IdentityStore,
  signer: Signer,
  file: Uint8Array,
): Promise<Result<IdentityRow>> {
  const row = rowOf(signer);
  try {
    await store.put({ ...row, file: base64(file) });
  } catch (error) {
    return refused(
      'notKept',
      `The certificate could not be kept: ${error instanceof Error ? error.message : error}. Make room on the disk, or see who may write there, then try again.`,
    );
  }
  return ok(row);
}

/** The signer behind a kept certificate. */
export async function openKept(
  store: IdentityStore,
  fingerprint: string,
  passphrase: string,
  now: string,
): Promise<Result<Signer>> {
  const found = (await store.list()).find((one) => one.fingerprint === fingerprint);
  if (!found)
    return refused(
      'noSuchIdentity',
      'This certificate is not on this computer. Make one, or take your own file in.',
    );
  return openSigner(new Uint8Array(Buffer.from(found.file, 'base64')), passphrase, now);
}

/** Calls about the certificates that sign on this computer. */
export function identitiesHandlers({
  identities,
  clock,
  tell,
}: ServiceParts): Handlers<'identities'> {
  const changed = <T>(result: Result<T>) => {
    if (result.ok) tell({ name: 'identities.changed', data: {} });
    return result;
  };
  return {
    'identities.list': reads(async () => {
      const kept = await identities.list();
      return ok(kept.map(rowOf));
    }),
    'identities.make': writes(async (wish) => {
      const made = await makeIdentity({ ...wish, now: clock(), validYears });
      if (!made.ok) return made;
      return changed(await keep(identities, made.value.signer, made.value.file));
    }),
    'identities.take': writes(async ({ file, passphrase }) => {
      const bytes = new Uint8Array(Buffer.from(file, 'base64'));
      const opened = await openPkcs12(bytes, passphrase, clock());
      if (!opened.ok) return opened;
      return changed(await keep(identities, opened.value, bytes));
    }),
    'identities.remove': writes(async ({ fingerprint }) => {
      await identities.remove(fingerprint);
      return changed(ok(null));
    }),
  };
}
