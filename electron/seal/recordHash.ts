import { sha256Hex } from './hash.ts';

/**
 * SHA-256 of a record as it was read, 64 hexadecimal digits: what a paper says that it shows, and
 * what an archive is asked for. The same record read again, from a file or an archive, has the same.
 */
export function recordHash(record: object): string {
  return sha256Hex(JSON.stringify(record));
}
