import { readIdentityFile } from './identity/identityFile.ts';
import { unlockKey } from './identity/lockedKey.ts';
import { missingKey, notAnIdentity, wrongPassphrase } from './identity/refusals.ts';
import { holderOf, inTime, signerOf, type Holder } from './identity/signerOf.ts';
import type { OpenIdentity } from './seal.ts';

function readHolder(certificate: Uint8Array): Holder | undefined {
  try {
    return holderOf(certificate);
  } catch {
    return undefined;
  }
}

/** Opens what `makeIdentity` made. What no passphrase can mend is told before it is tried. */
export const openIdentity: OpenIdentity = async (bytes, passphrase, now) => {
  const file = readIdentityFile(bytes);
  if (!file) return notAnIdentity();
  const certificate = new Uint8Array(Buffer.from(file.certificate, 'base64'));
  const holder = readHolder(certificate);
  if (!holder) return notAnIdentity();
  if (!file.key) return missingKey();
  const valid = inTime(holder, now);
  if (!valid.ok) return valid;
  const key = await unlockKey(file.key, passphrase, certificate);
  return key ? signerOf({ certificate, issuers: [], key }, now) : wrongPassphrase();
};
