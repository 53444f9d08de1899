import { hash } from 'node:crypto';

/** SHA-256 of bytes, or of a text as UTF-8: 64 hexadecimal digits. */
export function sha256Hex(data: string | Uint8Array): string {
  return hash('sha256', data);
}
