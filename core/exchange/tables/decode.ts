/** Encodings of text that are told apart. Windows-1252 has all of Latin-1's letters. */
export const encodings = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const;

export type Encoding = (typeof encodings)[number];

export interface Decoded {
  readonly text: string;
  readonly encoding: Encoding;
}

/** The decoder that pages and Node both have, and that the core's types do not. */
const { TextDecoder } = globalThis as unknown as {
  readonly TextDecoder: new (
    label: string,
    options?: { readonly fatal: boolean },
  ) => { decode(bytes: Uint8Array): string };
};

/** Bytes that are looked at where no mark tells the encoding. */
const lookedAt = 4096;

/** Every second byte of plain text in UTF-16 is zero: the first of each pair in big endian. */
function guessWide(bytes: Uint8Array): Encoding | undefined {
  const zeros = [0, 0];
  const length = Math.min(bytes.length, lookedAt);
  for (let at = 0; at < length; at++) if (bytes[at] === 0) zeros[at % 2]!++;
  const many = length / 4;
  if (zeros[1]! > many && zeros[0] === 0) return 'utf-16le';
  return zeros[0]! > many && zeros[1] === 0 ? 'utf-16be' : undefined;
}

function marked(bytes: Uint8Array): Encoding | undefined {
  const [first, second, third] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  return first === 0xef && second === 0xbb && third === 0xbf ? 'utf-8' : undefined;
}

/** Read by hand, since decoders of big endian are not everywhere. */
function littleEndian(bytes: Uint8Array): Uint8Array {
  const swapped = bytes.slice(0, bytes.length - (bytes.length % 2));
  for (let at = 0; at < swapped.length; at += 2)
    [swapped[at], swapped[at + 1]] = [swapped[at + 1]!, swapped[at]!];
  return swapped;
}

function decodeAs(bytes: Uint8Array, encoding: Encoding): string {
  if (encoding === 'utf-16be') return decodeAs(littleEndian(bytes), 'utf-16le');
  return new TextDecoder(encoding).decode(bytes);
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/**
 * Text of a file, without a byte order mark. Without one, what is not sound UTF-8 and does not
 * look like UTF-16 is taken for Windows-1252, which reads any bytes.
 */
export function decode(bytes: Uint8Array, asked?: Encoding): Decoded {
  const guessed = marked(bytes) ?? guessWide(bytes) ?? (isUtf8(bytes) ? 'utf-8' : 'windows-1252');
  const encoding = asked ?? guessed;
  return { text: decodeAs(bytes, encoding).replace(/^\uFEFF/, ''), encoding };
}
