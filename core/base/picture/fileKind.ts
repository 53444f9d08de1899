/** Media types of the files that a well folder keeps as photos and scans. */
export const fileKinds = ['image/jpeg', 'image/png', 'image/webp', 'application/pdf'] as const;
export type FileKind = (typeof fileKinds)[number];

/** What a file can be told to be; HEIC is known only to say what to do with it. */
export type KnownKind = FileKind | 'image/heic';

/** Codes after `ftyp` of pictures in the HEIF container; ISO/IEC 23008-12 (from memory). */
const heicBrands = ['heic', 'heix', 'heim', 'heis', 'hevc', 'mif1', 'msf1'];

function letters(bytes: Uint8Array, from: number, to: number): string {
  return String.fromCharCode(...bytes.subarray(from, to));
}

/**
 * What a file is, by its first bytes and never by its name; undefined for all other kinds. The
 * marks are those of ISO/IEC 10918-1 (JPEG), 15948 (PNG), 32000-1 (PDF) and RFC 9649 (WebP).
 */
export function fileKind(bytes: Uint8Array): KnownKind | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'image/jpeg';
  if (letters(bytes, 0, 8) === '\x89PNG\r\n\x1a\n') return 'image/png';
  if (letters(bytes, 0, 4) === 'RIFF' && letters(bytes, 8, 12) === 'WEBP') return 'image/webp';
  if (letters(bytes, 0, 5) === '%PDF-') return 'application/pdf';
  const heic = letters(bytes, 4, 8) === 'ftyp' && heicBrands.includes(letters(bytes, 8, 12));
  return heic ? 'image/heic' : undefined;
}
