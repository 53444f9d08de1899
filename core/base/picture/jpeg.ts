/** One segment of a JPEG file before its picture data. */
interface Segment {
  /** Second byte of the marker, as in 0xe1 for APP1. */
  readonly marker: number;
  /** Without marker and length. */
  readonly content: Uint8Array;
}

/** The segments up to the start of the picture data; ends early where a file is cut off. */
export function* jpegSegments(bytes: Uint8Array): Generator<Segment> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1]!;
    const length = view.getUint16(at + 2);
    // 0xda begins the picture data, which are no segments.
    if (marker === 0xda || length < 2 || at + 2 + length > bytes.length) return;
    yield { marker, content: bytes.subarray(at + 4, at + 2 + length) };
    at += 2 + length;
  }
}

/** Frame headers are 0xc0 to 0xcf without these three, which are tables (ISO/IEC 10918-1, B.1.1.3). */
const tables = [0xc4, 0xc8, 0xcc];

/** Pixels across and down as the file stores them; undefined where it is no whole JPEG header. */
export function jpegSize(
  bytes: Uint8Array,
): { readonly width: number; readonly height: number } | undefined {
  for (const { marker, content } of jpegSegments(bytes)) {
    const isFrame = marker >= 0xc0 && marker <= 0xcf && !tables.includes(marker);
    if (!isFrame || content.length < 5) continue;
    const size = new DataView(content.buffer, content.byteOffset);
    const [height, width] = [size.getUint16(1), size.getUint16(3)];
    return width > 0 && height > 0 ? { width, height } : undefined;
  }
  return undefined;
}
