import { fromBER, OctetString, type ObjectIdentifier, type Sequence } from 'asn1js';
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
  /** Hashes of the certificates that were signed along, the signer's first. */
  readonly certificateHashes: readonly CertificateHash[];
}

export interface CertificateHash {
  /** Name of the hash, for Node; absent where it is not known here. */
  readonly hash?: string;
  readonly value: Uint8Array;
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

/** RFC 5035: an algorithm, unless it is SHA-256; the hash; and perhaps the issuer's name. */
function certificateHash({ valueBlock: { value } }: Sequence): CertificateHash {
  const at = value.findIndex((part) => part instanceof OctetString);
  const bytes = (value[at] as OctetString | undefined)?.getValue() ?? new ArrayBuffer();
  const [algorithm] = at > 0 ? (value[0] as Sequence).valueBlock.value : [];
  const id = algorithm ? (algorithm as ObjectIdentifier).getValue() : objectIds.sha256;
  const hash = hashes[id];
  return { ...(hash === undefined ? {} : { hash }), value: new Uint8Array(bytes) };
}

function certificateHashesOf(value: unknown): readonly CertificateHash[] {
  const [ids] = (value as Sequence | undefined)?.valueBlock.value ?? [];
  return ((ids as Sequence | undefined)?.valueBlock.value ?? []).map((id) =>
    certificateHash(id as Sequence),
  );
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
