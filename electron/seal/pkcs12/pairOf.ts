import { X509Certificate } from 'node:crypto';
import type { KeyPair } from '../identity/signerOf.ts';
import type { Bags } from './readBags.ts';

/** Those who issued a certificate, and those who issued theirs, as far as they are at hand. */
function issuersOf(one: X509Certificate, others: readonly X509Certificate[]): X509Certificate[] {
  const issuer = others.find((other) => one.checkIssued(other));
  if (!issuer) return [];
  return [
    issuer,
    ...issuersOf(
      issuer,
      others.filter((other) => other !== issuer),
    ),
  ];
}

/** A key with the certificate that belongs to it; undefined where there are no such two. */
export function pairOf({ certificates, keys }: Bags): KeyPair | undefined {
  const all = certificates.map((der) => new X509Certificate(der));
  for (const key of keys) {
    const own = all.find((certificate) => certificate.checkPrivateKey(key));
    if (!own) continue;
    const others = all.filter((other) => other !== own);
    const bytes = ({ raw }: X509Certificate) => new Uint8Array(raw);
    return { key, certificate: bytes(own), issuers: issuersOf(own, others).map(bytes) };
  }
  return undefined;
}
