import { generateKeyPair } from 'node:crypto';
import { promisify } from 'node:util';
import { ok, refused } from '../../core/base/result.ts';
import { writeIdentityFile } from './identity/identityFile.ts';
import { lockKey } from './identity/lockedKey.ts';
import { signerOf } from './identity/signerOf.ts';
import { writeCertificate } from './identity/writeCertificate.ts';
import { shortestPassphrase, type IdentityWish, type MakeIdentity } from './seal.ts';

const makeKeys = promisify(generateKeyPair);

/** From the second that has begun, as certificates count. */
function timesOf({ now, validYears }: IdentityWish): { validFrom: Date; validTo: Date } {
  const validFrom = new Date(now);
  validFrom.setUTCMilliseconds(0);
  const validTo = new Date(validFrom);
  validTo.setUTCFullYear(validTo.getUTCFullYear() + validYears);
  return { validFrom, validTo };
}

/** A key for ECDSA on P-256 and a certificate in which the signer names himself. */
export const makeIdentity: MakeIdentity = async (wish) => {
  const name = wish.name.trim();
  if (name === '') return refused('noName', 'A seal names its signer: give a name.');
  if ([...wish.passphrase].length < shortestPassphrase)
    return refused(
      'shortPassphrase',
      `The passphrase is too short: ${shortestPassphrase} letters at least. Some words in a row are easy to keep in mind.`,
    );
  const { privateKey, publicKey } = await makeKeys('ec', { namedCurve: 'P-256' });
  const organisation = wish.organisation?.trim() || undefined;
  const named = { name, ...(organisation === undefined ? {} : { organisation }) };
  const certificate = writeCertificate({ ...named, ...timesOf(wish), publicKey, privateKey });
  const file = writeIdentityFile(
    name,
    certificate,
    await lockKey(privateKey, wish.passphrase, certificate),
  );
  const signer = signerOf({ certificate, issuers: [], key: privateKey }, wish.now);
  return signer.ok ? ok({ file, signer: signer.value }) : signer;
};
