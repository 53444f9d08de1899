import { constants, createHash, verify, X509Certificate } from 'node:crypto';
import {
  readSignedData,
  type CertificateHash,
  type ReadSignedData,
} from '../cms/readSignedData.ts';
import { writeSignedData } from '../cms/signedData.ts';
import { holderOf, type Holder } from '../identity/signerOf.ts';
import { ownMark } from '../pdf/composeSeal.ts';
import type { Span } from '../pdf/scan.ts';
import type { Signature } from './findSignatures.ts';

export interface CheckedSignature {
  /** Whose it is; absent where it could not be read. */
  readonly holder?: Holder;
  /** What it covers has the digest that was signed. */
  readonly digestHolds: boolean;
  /** The certificate's key made it, and its place in the file is as it was written. */
  readonly signatureHolds: boolean;
}

const unreadable: CheckedSignature = { digestHolds: false, signatureHolds: false };

const equal = (a: Uint8Array, b: Uint8Array) => Buffer.compare(a, b) === 0;

function digestOf(bytes: Uint8Array, { range }: Signature, hash: string): Uint8Array {
  const [, before, after, rest] = range;
  const sum = createHash(hash).update(bytes.subarray(0, before));
  return sum.update(bytes.subarray(after, after + rest)).digest();
}

function keyMadeIt({ certificate, hash, signed, signature, pss }: ReadSignedData): boolean {
  const key = new X509Certificate(certificate).publicKey;
  const padding = pss ? { padding: constants.RSA_PKCS1_PSS_PADDING } : {};
  return verify(hash, signed, { key, ...padding }, signature);
}

function isOf({ hash, value }: CertificateHash, certificate: Uint8Array): boolean {
  return hash !== undefined && equal(value, createHash(hash).update(certificate).digest());
}

/** A certificate could be exchanged for another of the same key if it were not signed along. */
function certificateFits({ certificate, certificateHashes: [first] }: ReadSignedData): boolean {
  return first === undefined || isOf(first, certificate);
}

/**
 * A signature's own bytes are covered by none. The program writes them in one way only, so that
 * whatever was changed in them shows; of other programs' it can only ask that nothing be hidden
 * behind the signature.
 */
function placeIsAsWritten(digits: string, read: ReadSignedData, own: boolean): boolean {
  if (!/^0*$/.test(digits.slice(2 * read.length))) return false;
  if (!own) return true;
  const { certificate, digest, signature } = read;
  const issuers = inSignedOrder(read);
  const again = writeSignedData({ certificate, issuers, digest }, signature);
  return digits.startsWith(Buffer.from(again).toString('hex'));
}

/** Issuers as they were signed along. */
function inSignedOrder({ others, certificateHashes: [, ...hashes] }: ReadSignedData) {
  const placeOf = (one: Uint8Array) => hashes.findIndex((hash) => isOf(hash, one));
  return [...others].sort((a, b) => placeOf(a) - placeOf(b));
}

function isOwn(text: string, mark: Span | undefined): boolean {
  return mark !== undefined && text.slice(mark.start, mark.end) === ownMark;
}

/** Checks one signature whose part of the file is known. Never throws. */
export function checkSignature(
  bytes: Uint8Array,
  text: string,
  signature: Signature,
): CheckedSignature {
  const [, before, after] = signature.range;
  const digits = text.slice(before + 1, after - 1);
  // Other programs may break the digits into lines.
  const own = isOwn(text, signature.entries.get('Prop_Build'));
  const packed = own ? digits : digits.replace(/\s/g, '');
  if (!/^([0-9a-f]{2})+$/i.test(packed)) return unreadable;
  try {
    const read = readSignedData(Buffer.from(packed, 'hex'));
    return {
      holder: holderOf(read.certificate),
      digestHolds: equal(digestOf(bytes, signature, read.hash), read.digest),
      signatureHolds:
        keyMadeIt(read) && certificateFits(read) && placeIsAsWritten(packed, read, own),
    };
  } catch {
    return unreadable;
  }
}
