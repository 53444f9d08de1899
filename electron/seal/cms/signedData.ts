import { createHash, sign, X509Certificate, type KeyObject } from 'node:crypto';
import { Certificate } from 'pkijs';
import { objectIds } from '../der/objectIds.ts';
import {
  encode,
  integer,
  nothing,
  objectId,
  octets,
  ready,
  sequence,
  setOf,
  tagged,
  type Value,
} from '../der/write.ts';

/** What a signature says, besides itself. */
export interface Statement {
  /** SHA-256 of what is signed. */
  readonly digest: Uint8Array;
  /** The signer's, DER. */
  readonly certificate: Uint8Array;
  readonly issuers: readonly Uint8Array[];
}

const hashOf = (bytes: Uint8Array) => new Uint8Array(createHash('sha256').update(bytes).digest());

function attribute(type: string, value: Value): Value {
  return sequence(objectId(type), setOf(value));
}

/** RFC 5035: binds the signature to these very certificates. SHA-256 goes without saying. */
function certificateIds({ certificate, issuers }: Statement): Value {
  const ids = [certificate, ...issuers].map((one) => sequence(octets(hashOf(one))));
  return sequence(sequence(...ids));
}

/**
 * What PAdES baseline B has signed (ETSI EN 319 142-1, 6.3): kind, digest and certificate, and no
 * time of signing, which stands in the PDF. DER sorts them in this order.
 */
function attributesOf(statement: Statement): readonly Value[] {
  return [
    attribute(objectIds.contentType, objectId(objectIds.data)),
    attribute(objectIds.messageDigest, octets(statement.digest)),
    attribute(objectIds.signingCertificateV2, certificateIds(statement)),
  ];
}

/** The very bytes that are signed: RFC 5652, 5.4. */
export function signedBytes(statement: Statement): Uint8Array {
  return encode(setOf(...attributesOf(statement)));
}

/** The signature's value over a statement. */
export function signStatement(statement: Statement, key: KeyObject): Uint8Array {
  return new Uint8Array(sign('sha256', signedBytes(statement), key));
}

/** RFC 5754: RSA names no parameters by NULL, ECDSA by leaving them out. */
function signatureAlgorithm(certificate: Uint8Array): Value {
  return new X509Certificate(certificate).publicKey.asymmetricKeyType === 'rsa'
    ? sequence(objectId(objectIds.rsaWithSha256), nothing())
    : sequence(objectId(objectIds.ecdsaWithSha256));
}

function signerInfo(statement: Statement, signature: Uint8Array): Value {
  const { issuer, serialNumber } = Certificate.fromBER(new Uint8Array(statement.certificate));
  return sequence(
    integer(1),
    sequence(issuer.toSchema(), serialNumber),
    sequence(objectId(objectIds.sha256)),
    tagged(0, ...attributesOf(statement)),
    signatureAlgorithm(statement.certificate),
    octets(signature),
  );
}

/** DER puts the members of a set in the order of their bytes. */
function inOrder(encoded: readonly Uint8Array[]): readonly Uint8Array[] {
  return [...encoded].sort((a, b) => Buffer.compare(a, b));
}

/** CMS SignedData without its content (RFC 5652), in DER. The same parts give the same bytes. */
export function writeSignedData(statement: Statement, signature: Uint8Array): Uint8Array {
  const certificates = inOrder([statement.certificate, ...statement.issuers]).map(ready);
  const signedData = sequence(
    integer(1),
    setOf(sequence(objectId(objectIds.sha256))),
    sequence(objectId(objectIds.data)),
    tagged(0, ...certificates),
    setOf(signerInfo(statement, signature)),
  );
  return encode(sequence(objectId(objectIds.signedData), tagged(0, signedData)));
}
