import { hash } from 'node:crypto';

/** SHA-256 of a text as UTF-8, 64 hexadecimal digits. */
export function sha256Hex(text: string): string {
  return hash('sha256', text);
}
