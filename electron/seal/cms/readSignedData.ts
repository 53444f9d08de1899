import { fromBER, type OctetString, type Sequence } from 'asn1js';
import {
  Certificate,
  ContentInfo,
  IssuerAndSerialNumber,
  SignedData,
  type Attribute,
  type SignerInfo,
} from 'pkijs';
import { objectIds } from '../der/objectIds.ts';
import { encode } from '../der/write.ts';

/** A signature as it was read. */
export interface ReadSignedData {
  /** Bytes that it takes. */
  readonly length: number;
  /** The signer's, DER. */
  readonly certificate: Uint8Array;
  /** The others that came along, DER. */
  readonly others: readonly Uint8Array[];
  /** Name of the hash, for Node. */
  readonly hash: string;
  /** The digest that was signed. */
  readonly digest: Uint8Array;
  /** The bytes that were signed: the digest among them. */
  readonly signed: Uint8Array;
  readonly signature: Uint8Array;
  /** Whether RSA signed with PSS. */
  readonly pss: boolean;
  /** SHA-256 of each certificate that was signed along, the signer's first. */
  readonly certificateHashes: readonly Uint8Array[];
}

/** Hashes that are still good; by NIST's identifiers. */
const hashes: Readonly<Record<string, string>> = {
  [objectIds.sha256]: 'sha256',
  '2.16.840.1.101.3.4.2.2': 'sha384',
  '2.16.840.1.101.3.4.2.3': 'sha512',
};

const pssId = '1.2.840.113549.1.1.10';

/** What was read is no signature, or one of a kind that is not known. */
export class NoSignature extends Error {}

function valueOf(attributes: readonly Attribute[], type: string): unknown {
  return attributes.find((one) => one.type === type)?.values[0];
}

function certificateHashesOf(value: unknown): readonly Uint8Array[] {
  const [ids] = (value as Sequence | undefined)?.valueBlock.value ?? [];
  return ((ids as Sequence | undefined)?.valueBlock.value ?? []).map((id) => {
    const hash = (id as Sequence).valueBlock.value.at(-1) as OctetString;
    // A hash by another algorithm than SHA-256, which stands before it, cannot fit.
    return new Uint8Array(hash.getValue());
  });
}

function isSigners({ sid }: SignerInfo, certificate: Certificate): boolean {
  if (!(sid instanceof IssuerAndSerialNumber)) return true;
  return (
    sid.serialNumber.isEqual(certificate.serialNumber) && sid.issuer.isEqual(certificate.issuer)
  );
}

function splitCertificates({ certificates = [] }: SignedData, signer: SignerInfo) {
  const all = certificates.filter((one) => one instanceof Certificate);
  const own = all.find((one) => isSigners(signer, one));
  if (!own) throw new NoSignature();
  const der = (one: Certificate) => encode(one.toSchema());
  return { certificate: der(own), others: all.filter((one) => one !== own).map(der) };
}

/** Reads CMS SignedData (RFC 5652) with one signer. Throws where it is none. */
export function readSignedData(bytes: Uint8Array): ReadSignedData {
  const { offset, result } = fromBER(new Uint8Array(bytes));
  if (offset <= 0) throw new NoSignature();
  const { content, contentType } = new ContentInfo({ schema: result });
  const signedData = new SignedData({ schema: content });
  const [signer, ...more] = signedData.signerInfos;
  const attributes = signer?.signedAttrs;
  const hash = hashes[signer?.digestAlgorithm.algorithmId ?? ''];
  if (contentType !== objectIds.signedData || more.length > 0) throw new NoSignature();
  if (!signer || !attributes || hash === undefined) throw new NoSignature();
  const digest = valueOf(attributes.attributes, objectIds.messageDigest) as OctetString | undefined;
  if (!digest) throw new NoSignature();
  return {
    length: offset,
    ...splitCertificates(signedData, signer),
    hash,
    digest: new Uint8Array(digest.getValue()),
    signed: new Uint8Array(attributes.encodedValue),
    signature: new Uint8Array(signer.signature.getValue()),
    pss: signer.signatureAlgorithm.algorithmId === pssId,
    certificateHashes: certificateHashesOf(
      valueOf(attributes.attributes, objectIds.signingCertificateV2),
    ),
  };
}
