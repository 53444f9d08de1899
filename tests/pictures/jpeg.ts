import type { Paint } from './png.ts';

/** Bits of picture data, the highest of a byte first. */
class Bits {
  readonly bytes: number[] = [];
  #held = 0;
  #count = 0;

  put(value: number, length: number): void {
    for (let at = length - 1; at >= 0; at -= 1) {
      this.#held = (this.#held << 1) | ((value >> at) & 1);
      this.#count += 1;
      if (this.#count === 8) this.#out();
    }
  }

  end(): void {
    while (this.#count > 0) this.put(1, 1);
  }

  #out(): void {
    this.bytes.push(this.#held);
    // A byte of ones is followed by an empty one, so that it is no marker.
    if (this.#held === 0xff) this.bytes.push(0);
    this.#held = 0;
    this.#count = 0;
  }
}

function segment(marker: number, content: readonly number[]): number[] {
  const length = content.length + 2;
  return [0xff, marker, length >> 8, length & 255, ...content];
}

/** Twelve codes of four bits for the lengths of differences; one code of one bit for "no more". */
const dcTable = [
  0,
  0,
  0,
  0,
  12,
  ...Array<number>(12).fill(0),
  0,
  1,
  2,
  3,
  4,
  5,
  6,
  7,
  8,
  9,
  10,
  11,
];
const acTable = [0x10, 1, ...Array<number>(15).fill(0), 0];

function head(width: number, height: number): number[] {
  const jfif = [0x4a, 0x46, 0x49, 0x46, 0, 1, 1, 0, 0, 1, 0, 1, 0, 0];
  const frame = [8, height >> 8, height & 255, width >> 8, width & 255, 1, 1, 0x11, 0];
  return [
    ...[0xff, 0xd8],
    ...segment(0xe0, jfif),
    ...segment(0xdb, [0, ...Array<number>(64).fill(8)]),
    ...segment(0xc0, frame),
    ...segment(0xc4, dcTable),
    ...segment(0xc4, acTable),
    ...segment(0xda, [1, 1, 0, 0, 63, 0]),
  ];
}

/** Writes the difference of a block's mean from the one before, and that nothing else follows. */
function putMean(bits: Bits, difference: number): void {
  const length = Math.abs(difference).toString(2).length * Number(difference !== 0);
  bits.put(length, 4);
  bits.put(difference > 0 ? difference : difference + 2 ** length - 1, length);
  bits.put(0, 1);
}

/**
 * A grey baseline JPEG whose 8 by 8 blocks are each of one shade: only the mean of a block is
 * coded. Tables and codes follow ISO/IEC 10918-1, annexes B and F.
 * Extra segments come before all others, as a camera's do.
 */
export function jpegOf(
  width: number,
  height: number,
  paint: Paint,
  extra: readonly number[] = [],
): Buffer {
  const bits = new Bits();
  let last = 0;
  for (let y = 0; y < height; y += 8)
    for (let x = 0; x < width; x += 8) {
      const [red, green, blue] = paint(x, y);
      const mean = Math.round((red + green + blue) / 3) - 128;
      putMean(bits, mean - last);
      last = mean;
    }
  bits.end();
  const [start, mark, ...rest] = head(width, height);
  return Buffer.from([start!, mark!, ...extra, ...rest, ...bits.bytes, 0xff, 0xd9]);
}
