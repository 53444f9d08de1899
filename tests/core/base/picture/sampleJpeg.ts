/** A segment of a JPEG: its marker, its length with the two bytes of the length, its content. */
export function segment(marker: number, content: readonly number[]): number[] {
  const length = content.length + 2;
  return [0xff, marker, length >> 8, length & 255, ...content];
}

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));

/** Eight bits a sample, then lines and samples a line (ISO/IEC 10918-1, B.2.2). */
export function frame(width: number, height: number, marker = 0xc0): number[] {
  return segment(marker, [8, height >> 8, height & 255, width >> 8, width & 255, 1, 1, 0x11, 0]);
}

/** Numbers in the byte order of a TIFF part. */
function inOrder(littleEndian: boolean) {
  const bytes = (value: number, count: number) =>
    Array.from({ length: count }, (_, at) => (value >> (8 * (count - 1 - at))) & 255);
  const put = (value: number, count: number) =>
    littleEndian ? bytes(value, count).reverse() : bytes(value, count);
  return { short: (value: number) => put(value, 2), long: (value: number) => put(value, 4) };
}

/**
 * An APP1 segment as a camera writes it: orientation and a pointer to the Exif part, which holds
 * the moment (CIPA DC-008, 4.5 and 4.6, from memory).
 */
export function exif(moment: string, littleEndian = true): number[] {
  const { short, long } = inOrder(littleEndian);
  const field = (tag: number, type: number, count: number, value: number[]) => [
    ...short(tag),
    ...short(type),
    ...long(count),
    ...value,
  ];
  const first = [
    ...short(2),
    ...field(0x0112, 3, 1, [...short(6), 0, 0]),
    ...field(0x8769, 4, 1, long(38)),
    ...long(0),
  ];
  const part = [...short(1), ...field(0x9003, 2, 20, long(56)), ...long(0)];
  const head = [...ascii(littleEndian ? 'II' : 'MM'), ...short(42), ...long(8)];
  return segment(0xe1, [...ascii('Exif\0\0'), ...head, ...first, ...part, ...ascii(`${moment}\0`)]);
}

/** The head of a JPEG; nothing in it can be seen. */
export function jpegOf(...segments: readonly (readonly number[])[]): Uint8Array {
  return Uint8Array.from([
    0xff,
    0xd8,
    ...segments.flat(),
    ...segment(0xda, [1, 1, 0, 0, 63, 0]),
    7,
  ]);
}
