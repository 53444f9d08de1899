import type { LockedKey } from './lockedKey.ts';

/** What an identity's file holds: JSON in UTF-8. */
export interface IdentityFile {
  readonly kind: 'borefolio-identity';
  readonly version: 1;
  /** For people who look into the file; what counts is the certificate. */
  readonly name: string;
  /** DER in base64. */
  readonly certificate: string;
  /** Absent in a copy that is only to be shown. */
  readonly key?: LockedKey;
}

const kind = 'borefolio-identity';

const isText = (value: unknown) => typeof value === 'string';
const isCount = (value: unknown) => Number.isInteger(value) && (value as number) > 0;

function isLockedKey(value: unknown): value is LockedKey {
  if (typeof value !== 'object' || value === null) return false;
  const { cost, blockSize, parallel, ...texts } = value as Record<string, unknown>;
  const { salt, nonce, tag, locked } = texts;
  return [cost, blockSize, parallel].every(isCount) && [salt, nonce, tag, locked].every(isText);
}

function isIdentityFile(value: unknown): value is IdentityFile {
  if (typeof value !== 'object' || value === null) return false;
  const file = value as Record<string, unknown>;
  return (
    file['kind'] === kind &&
    file['version'] === 1 &&
    [file['name'], file['certificate']].every(isText) &&
    (file['key'] === undefined || isLockedKey(file['key']))
  );
}

export function writeIdentityFile(
  name: string,
  certificate: Uint8Array,
  key: LockedKey,
): Uint8Array {
  const file: IdentityFile = {
    kind,
    version: 1,
    name,
    certificate: Buffer.from(certificate).toString('base64'),
    key,
  };
  return new Uint8Array(Buffer.from(`${JSON.stringify(file, undefined, 2)}\n`));
}

/** Undefined where the bytes are no identity's file. */
export function readIdentityFile(bytes: Uint8Array): IdentityFile | undefined {
  try {
    const value: unknown = JSON.parse(Buffer.from(bytes).toString('utf8'));
    return isIdentityFile(value) ? value : undefined;
  } catch {
    return undefined;
  }
}
