import { randomBytes, sign, type KeyObject } from 'node:crypto';
import { GeneralizedTime, UTCTime } from 'asn1js';
import { objectIds } from '../der/objectIds.ts';
import {
  bits,
  encode,
  integer,
  longInteger,
  objectId,
  octets,
  ready,
  sequence,
  setOf,
  tagged,
  utf8,
  type Value,
} from '../der/write.ts';

export interface CertificateWish {
  readonly name: string;
  readonly organisation?: string;
  readonly validFrom: Date;
  readonly validTo: Date;
  /** An ECDSA P-256 pair. */
  readonly publicKey: KeyObject;
  readonly privateKey: KeyObject;
}

function nameOf({ name, organisation }: CertificateWish): Value {
  const part = (type: string, text: string) => setOf(sequence(objectId(type), utf8(text)));
  const parts = [part(objectIds.commonName, name)];
  if (organisation !== undefined) parts.unshift(part(objectIds.organisation, organisation));
  return sequence(...parts);
}

/** RFC 5280, 4.1.2.5: two digits of the year until 2049, four from then on. */
function time(moment: Date): Value {
  return moment.getUTCFullYear() < 2050
    ? new UTCTime({ valueDate: moment })
    : new GeneralizedTime({ valueDate: moment });
}

/** For signing and for standing by what was signed; for issuing nothing. */
function extensions(): Value {
  const extension = (type: string, value: Value) =>
    sequence(objectId(type), ready(new Uint8Array([1, 1, 255])), octets(encode(value)));
  return tagged(
    3,
    sequence(
      extension(objectIds.basicConstraints, sequence()),
      extension(objectIds.keyUsage, bits(new Uint8Array([0b11000000]), 6)),
    ),
  );
}

/** Positive, and never the same twice: 16 bytes by chance. */
function serialNumber(): Value {
  const bytes = randomBytes(16);
  bytes[0] = (bytes[0]! & 0x3f) | 0x40;
  return longInteger(new Uint8Array(bytes));
}

/** A certificate (RFC 5280) in which the holder of a key names himself, in DER. */
export function writeCertificate(wish: CertificateWish): Uint8Array {
  const algorithm = () => sequence(objectId(objectIds.ecdsaWithSha256));
  const publicKey = wish.publicKey.export({ type: 'spki', format: 'der' });
  const signed = sequence(
    tagged(0, integer(2)),
    serialNumber(),
    algorithm(),
    nameOf(wish),
    sequence(time(wish.validFrom), time(wish.validTo)),
    nameOf(wish),
    ready(new Uint8Array(publicKey)),
    extensions(),
  );
  const signature = sign('sha256', encode(signed), wish.privateKey);
  return encode(sequence(signed, algorithm(), bits(new Uint8Array(signature))));
}
