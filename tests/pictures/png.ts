import { crc32, deflateSync } from 'node:zlib';

/** Colour of a point, red, green and blue from 0 to 255. */
export type Paint = (x: number, y: number) => readonly [number, number, number];

function chunk(type: string, content: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), content]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(content.length, 0);
  frame.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)]);
}

/** A picture of our own as PNG (ISO/IEC 15948): eight bits a channel, no filter. */
export function pngOf(width: number, height: number, paint: Paint): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2, 0, 0, 0], 8);
  const rows = Buffer.alloc(height * (1 + 3 * width));
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) rows.set(paint(x, y), y * (1 + 3 * width) + 1 + 3 * x);
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', new Uint8Array()),
  ]);
}
