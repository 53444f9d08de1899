import { createPrivateKey, type KeyObject } from 'node:crypto';
import { OctetString } from 'asn1js';
import {
  AuthenticatedSafe,
  CertBag,
  EncryptedData,
  PFX,
  PKCS8ShroudedKeyBag,
  PrivateKeyInfo,
  SafeContents,
  type ContentInfo,
  type SafeBag,
} from 'pkijs';
import { unlock } from './unlock.ts';

/** What a PKCS#12 file holds of use here. */
export interface Bags {
  /** DER. */
  readonly certificates: readonly Uint8Array[];
  readonly keys: readonly KeyObject[];
}

const encryptedData = '1.2.840.113549.1.7.6';

/** The parts of a file, still locked. Throws where it is no PKCS#12 file. */
export function readSafes(file: Uint8Array): readonly ContentInfo[] {
  const { authSafe } = PFX.fromBER(new Uint8Array(file));
  const content = (authSafe.content as OctetString).getValue();
  return AuthenticatedSafe.fromBER(content).safeContents;
}

function bagsOf(safe: ContentInfo, passphrase: string): readonly SafeBag[] {
  if (safe.contentType !== encryptedData)
    return SafeContents.fromBER((safe.content as OctetString).getValue()).safeBags;
  const { encryptedContentInfo } = new EncryptedData({ schema: safe.content });
  const locked = new Uint8Array(encryptedContentInfo.getEncryptedContent());
  const algorithm = encryptedContentInfo.contentEncryptionAlgorithm;
  return SafeContents.fromBER(new Uint8Array(unlock(algorithm, locked, passphrase))).safeBags;
}

function keyOf(der: Uint8Array): KeyObject {
  return createPrivateKey({ key: Buffer.from(der), format: 'der', type: 'pkcs8' });
}

function readBag({ bagValue }: SafeBag, passphrase: string): Uint8Array | KeyObject | undefined {
  if (bagValue instanceof CertBag)
    return bagValue.certValue instanceof OctetString
      ? new Uint8Array(bagValue.certValue.getValue())
      : undefined;
  if (bagValue instanceof PrivateKeyInfo) return keyOf(new Uint8Array(bagValue.toSchema().toBER()));
  if (!(bagValue instanceof PKCS8ShroudedKeyBag)) return undefined;
  const { encryptionAlgorithm, encryptedData: locked } = bagValue;
  return keyOf(unlock(encryptionAlgorithm, new Uint8Array(locked.getValue()), passphrase));
}

/** Opens the parts. Throws where the passphrase is another. */
export function readBags(safes: readonly ContentInfo[], passphrase: string): Bags {
  const read = safes
    .flatMap((safe) => bagsOf(safe, passphrase))
    .map((bag) => readBag(bag, passphrase))
    .filter((one) => one !== undefined);
  return {
    certificates: read.filter((one) => one instanceof Uint8Array),
    keys: read.filter((one): one is KeyObject => !(one instanceof Uint8Array)),
  };
}
