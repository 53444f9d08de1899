import {
  createCipheriv,
  createDecipheriv,
  createPrivateKey,
  randomBytes,
  scrypt,
  type KeyObject,
} from 'node:crypto';
import { promisify } from 'node:util';

/** A private key under a passphrase. Bytes are in base64. */
export interface LockedKey {
  /** Work of scrypt (RFC 7914): N, r and p. */
  readonly cost: number;
  readonly blockSize: number;
  readonly parallel: number;
  readonly salt: string;
  readonly nonce: string;
  readonly tag: string;
  /** PKCS#8 in DER, under AES-256-GCM. */
  readonly locked: string;
}

type Work = Pick<LockedKey, 'cost' | 'blockSize' | 'parallel'>;

/** 128 MB and a third of a second: nothing for one who knows, much for one who guesses. */
const work: Work = { cost: 2 ** 17, blockSize: 8, parallel: 1 };
/** A file cannot ask for more work than this, in bytes of memory. */
const mostMemory = 2 ** 30;

const stretch = promisify<string, Uint8Array, number, object, Buffer>(scrypt);

function keyFrom(passphrase: string, salt: Uint8Array, { cost, blockSize, parallel }: Work) {
  const options = { N: cost, r: blockSize, p: parallel, maxmem: mostMemory };
  // One letter can be typed as one sign or as two that combine.
  return stretch(passphrase.normalize('NFC'), salt, 32, options);
}

const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');
const fromBase64 = (text: string) => Buffer.from(text, 'base64');

/** `beside` is bound to the key: with another the key does not open. */
export async function lockKey(
  key: KeyObject,
  passphrase: string,
  beside: Uint8Array,
): Promise<LockedKey> {
  const [salt, nonce] = [randomBytes(16), randomBytes(12)];
  const cipher = createCipheriv('aes-256-gcm', await keyFrom(passphrase, salt, work), nonce);
  cipher.setAAD(beside);
  const locked = [cipher.update(key.export({ type: 'pkcs8', format: 'der' })), cipher.final()];
  return {
    ...work,
    salt: base64(salt),
    nonce: base64(nonce),
    tag: base64(cipher.getAuthTag()),
    locked: base64(Buffer.concat(locked)),
  };
}

/** The key; undefined when the passphrase is another, or the file was changed. */
export async function unlockKey(
  kept: LockedKey,
  passphrase: string,
  beside: Uint8Array,
): Promise<KeyObject | undefined> {
  const { salt, nonce, tag, locked } = kept;
  try {
    const opening = await keyFrom(passphrase, fromBase64(salt), kept);
    const decipher = createDecipheriv('aes-256-gcm', opening, fromBase64(nonce), {
      authTagLength: 16,
    });
    decipher.setAAD(beside).setAuthTag(fromBase64(tag));
    const der = Buffer.concat([decipher.update(fromBase64(locked)), decipher.final()]);
    return createPrivateKey({ key: der, format: 'der', type: 'pkcs8' });
  } catch {
    return undefined;
  }
}
