import { createHash } from 'node:crypto';

/** Block and result of SHA-1, in bytes. */
const [blockBytes, hashBytes] = [64, 20];

/** What the bytes are for (RFC 7292, B.3). */
export const purposes = { key: 1, vector: 2 } as const;

function filled(bytes: Uint8Array): Uint8Array {
  const length = blockBytes * Math.ceil(bytes.length / blockBytes);
  return Uint8Array.from({ length }, (_, at) => bytes[at % bytes.length]!);
}

/** Letters of two bytes, the high one first, and a zero at the end. */
function wide(passphrase: string): Uint8Array {
  return Buffer.from(`${passphrase}\0`, 'utf16le').swap16();
}

/** Adds `by + 1` to a block taken as a number. */
function raise(block: Uint8Array, by: Uint8Array): void {
  let carry = 1;
  for (let at = block.length - 1; at >= 0; at -= 1) {
    carry += block[at]! + by[at]!;
    block[at] = carry & 0xff;
    carry >>= 8;
  }
}

export interface Stretching {
  readonly passphrase: string;
  readonly salt: Uint8Array;
  readonly rounds: number;
}

/** `length` bytes from a passphrase, as older PKCS#12 files make them (RFC 7292, B.2, SHA-1). */
export function deriveKey(
  { passphrase, salt, rounds }: Stretching,
  purpose: number,
  length: number,
): Uint8Array {
  const diversifier = new Uint8Array(blockBytes).fill(purpose);
  const input = Buffer.concat([filled(salt), filled(wide(passphrase))]);
  const made: Uint8Array[] = [];
  for (let have = 0; have < length; have += hashBytes) {
    let sum: Uint8Array = Buffer.concat([diversifier, input]);
    for (let round = 0; round < rounds; round += 1) sum = createHash('sha1').update(sum).digest();
    made.push(sum);
    const by = filled(sum).slice(0, blockBytes);
    for (let at = 0; at < input.length; at += blockBytes)
      raise(input.subarray(at, at + blockBytes), by);
  }
  return Buffer.concat(made).subarray(0, length);
}
