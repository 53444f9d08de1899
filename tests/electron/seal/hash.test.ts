import { expect, it } from 'vitest';
import { sha256Hex } from '../../../electron/seal/hash.ts';

it('hashes as FIPS 180-4 says', () => {
  // FIPS 180-4, example of SHA-256 for the message "abc".
  expect(sha256Hex('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
});

it('takes text as UTF-8', () => {
  expect(sha256Hex('é')).toBe(sha256Hex(Buffer.from([0xc3, 0xa9]).toString('utf8')));
  expect(sha256Hex('é')).not.toBe(sha256Hex('e'));
});
