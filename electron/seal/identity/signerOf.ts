import { X509Certificate, type KeyObject } from 'node:crypto';
import { Certificate } from 'pkijs';
import { ok, refused, type Result } from '../../../core/base/result.ts';
import { objectIds } from '../der/objectIds.ts';
import type { Signer } from '../seal.ts';

/** What a certificate says of its holder. */
export type Holder = Omit<Signer, 'key' | 'issuers'>;

/**
 * A part of the holder's name, the first of several. Read without `X509Certificate`'s own list,
 * which ends the whole program where a certificate holds a key that is none.
 */
function namePart({ subject }: Certificate, type: string): string | undefined {
  const part = subject.typesAndValues.find((one) => one.type === type);
  const text: unknown = (part?.value as { getValue?(): unknown } | undefined)?.getValue?.();
  return typeof text === 'string' ? text : undefined;
}

function isSelfSigned(certificate: X509Certificate): boolean {
  return certificate.subject === certificate.issuer && certificate.verify(certificate.publicKey);
}

/** Reads a certificate in DER. Throws where it is none. */
export function holderOf(der: Uint8Array): Holder {
  const certificate = new X509Certificate(der);
  const read = Certificate.fromBER(new Uint8Array(der));
  const organisation = namePart(read, objectIds.organisation);
  return {
    name: namePart(read, objectIds.commonName) ?? organisation ?? certificate.subject,
    ...(organisation === undefined ? {} : { organisation }),
    certificate: der,
    fingerprint: certificate.fingerprint256,
    selfSigned: isSelfSigned(certificate),
    validFrom: certificate.validFromDate.toISOString(),
    validTo: certificate.validToDate.toISOString(),
  };
}

/** Whether a certificate was valid at a moment (ISO 8601). */
export function isInTime({ validFrom, validTo }: Holder, at: string): boolean {
  const moment = Date.parse(at);
  return Date.parse(validFrom) <= moment && moment <= Date.parse(validTo);
}

/** The same holder, unless the certificate is past its time or before it. */
export function inTime<H extends Holder>(holder: H, at: string): Result<H> {
  const { name, validFrom, validTo } = holder;
  const day = (moment: string) => moment.slice(0, 10);
  if (Date.parse(at) > Date.parse(validTo))
    return refused(
      'expiredCertificate',
      `The certificate of ${name} ended on ${day(validTo)}. Make a new identity, or ask for a new certificate.`,
    );
  if (Date.parse(at) < Date.parse(validFrom))
    return refused(
      'earlyCertificate',
      `The certificate of ${name} begins only on ${day(validFrom)}. Check this computer’s date.`,
    );
  return ok(holder);
}

const curves = ['prime256v1', 'secp384r1', 'secp521r1'];

function isKnownKind({ asymmetricKeyType: kind, asymmetricKeyDetails }: KeyObject): boolean {
  if (kind === 'rsa') return (asymmetricKeyDetails?.modulusLength ?? 0) >= 2048;
  return kind === 'ec' && curves.includes(asymmetricKeyDetails?.namedCurve ?? '');
}

export interface KeyPair {
  /** DER. */
  readonly certificate: Uint8Array;
  readonly issuers: readonly Uint8Array[];
  readonly key: KeyObject;
}

/** The signer of a certificate and its key, when they are of use now (ISO 8601). */
export function signerOf({ certificate, issuers, key }: KeyPair, now: string): Result<Signer> {
  if (!isKnownKind(key))
    return refused(
      'foreignKey',
      'The identity holds a kind of key that seals cannot be made with here. RSA of 2048 bits or more, or ECDSA on a NIST curve, will do.',
    );
  return inTime({ ...holderOf(certificate), issuers, key }, now);
}
