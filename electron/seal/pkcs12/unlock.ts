import { createDecipheriv, pbkdf2Sync } from 'node:crypto';
import type { AsnType, OctetString } from 'asn1js';
import { PBES2Params, PBKDF2Params, type AlgorithmIdentifier } from 'pkijs';
import { deriveKey, purposes } from './deriveKey.ts';

/** The lock is of a kind that is not known here. */
export class OldCipher extends Error {}

/** A file cannot ask for more work than this. */
const mostRounds = 10_000_000;

/** Ciphers of PBES2 (RFC 8018, NIST): name for Node and bytes of the key. */
const ciphers: Readonly<Record<string, readonly [name: string, keyBytes: number]>> = {
  '1.2.840.113549.3.7': ['des-ede3-cbc', 24],
  '2.16.840.1.101.3.4.1.2': ['aes-128-cbc', 16],
  '2.16.840.1.101.3.4.1.22': ['aes-192-cbc', 24],
  '2.16.840.1.101.3.4.1.42': ['aes-256-cbc', 32],
};

/** Hashes of PBKDF2 (RFC 8018). Where none is named, SHA-1 is meant. */
const hmacs: Readonly<Record<string, string>> = {
  '1.2.840.113549.2.7': 'sha1',
  '1.2.840.113549.2.9': 'sha256',
  '1.2.840.113549.2.10': 'sha384',
  '1.2.840.113549.2.11': 'sha512',
};

const pbes2 = '1.2.840.113549.1.5.13';
/** RFC 7292, appendix C: a passphrase, SHA-1 and three keys of DES. */
const shaAndTripleDes = '1.2.840.113549.1.12.1.3';

interface Opening {
  readonly cipher: string;
  readonly key: Uint8Array;
  readonly vector: Uint8Array;
}

const bytesOf = (value: AsnType) => new Uint8Array((value as OctetString).getValue());

function checkedRounds(rounds: number): number {
  if (!(rounds > 0 && rounds <= mostRounds)) throw new OldCipher();
  return rounds;
}

function openingOfPbes2(parameters: AsnType, passphrase: string): Opening {
  const { keyDerivationFunc, encryptionScheme } = new PBES2Params({ schema: parameters });
  const stretch = new PBKDF2Params({ schema: keyDerivationFunc.algorithmParams });
  const cipher = ciphers[encryptionScheme.algorithmId];
  const hmac = hmacs[stretch.prf?.algorithmId ?? '1.2.840.113549.2.7'];
  if (!cipher || !hmac) throw new OldCipher();
  const [name, keyBytes] = cipher;
  const rounds = checkedRounds(stretch.iterationCount);
  return {
    cipher: name,
    key: pbkdf2Sync(passphrase, bytesOf(stretch.salt), rounds, keyBytes, hmac),
    vector: bytesOf(encryptionScheme.algorithmParams),
  };
}

interface OldParameters {
  readonly valueBlock: { readonly value: readonly [AsnType, AsnType] };
}

function openingOfTripleDes(parameters: OldParameters, passphrase: string): Opening {
  const [salt, rounds] = parameters.valueBlock.value;
  const count = (rounds as AsnType & { valueBlock: { valueDec: number } }).valueBlock.valueDec;
  const stretching = { passphrase, salt: bytesOf(salt), rounds: checkedRounds(count) };
  return {
    cipher: 'des-ede3-cbc',
    key: deriveKey(stretching, purposes.key, 24),
    vector: deriveKey(stretching, purposes.vector, 8),
  };
}

function openingOf({ algorithmId, algorithmParams }: AlgorithmIdentifier, passphrase: string) {
  if (algorithmId === pbes2) return openingOfPbes2(algorithmParams, passphrase);
  if (algorithmId === shaAndTripleDes) return openingOfTripleDes(algorithmParams, passphrase);
  throw new OldCipher();
}

/** What lies under a passphrase. Throws: `OldCipher`, or anything where the passphrase is another. */
export function unlock(
  algorithm: AlgorithmIdentifier,
  locked: Uint8Array,
  passphrase: string,
): Uint8Array {
  const { cipher, key, vector } = openingOf(algorithm, passphrase);
  const decipher = createDecipheriv(cipher, key, vector);
  return new Uint8Array(Buffer.concat([decipher.update(locked), decipher.final()]));
}
