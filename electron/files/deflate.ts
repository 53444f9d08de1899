import { deflateSync } from 'node:zlib';

/** Packs bytes in zlib's format, one letter a byte before and after. */
export function deflate(letters: string): string {
  return deflateSync(Buffer.from(letters, 'latin1')).toString('latin1');
}
