import type { ContentInfo } from 'pkijs';
import { ok, type Result } from '../../core/base/result.ts';
import {
  missingCertificate,
  missingKey,
  notAnIdentity,
  oldCipher,
  wrongPassphrase,
} from './identity/refusals.ts';
import { signerOf } from './identity/signerOf.ts';
import { pairOf } from './pkcs12/pairOf.ts';
import { readBags, readSafes, type Bags } from './pkcs12/readBags.ts';
import { OldCipher } from './pkcs12/unlock.ts';
import type { OpenIdentity } from './seal.ts';

function safesOf(file: Uint8Array): readonly ContentInfo[] | undefined {
  try {
    return readSafes(file);
  } catch {
    return undefined;
  }
}

/** A false key mostly ends in padding at fault, and else in what is no certificate. */
function open(safes: readonly ContentInfo[], passphrase: string): Result<Bags> {
  try {
    return ok(readBags(safes, passphrase));
  } catch (error) {
    return error instanceof OldCipher ? oldCipher() : wrongPassphrase();
  }
}

/**
 * Opens a PKCS#12 file (RFC 7292) that another program made. Its own sum over the whole is not
 * looked at: a key that does not belong to its certificate is found out without.
 */
export const openPkcs12: OpenIdentity = async (file, passphrase, now) => {
  const safes = safesOf(file);
  if (!safes) return notAnIdentity();
  const bags = open(safes, passphrase);
  if (!bags.ok) return bags;
  if (bags.value.keys.length === 0) return missingKey();
  const pair = pairOf(bags.value);
  return pair ? signerOf(pair, now) : missingCertificate();
};
