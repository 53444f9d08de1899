import type { HeldPicture } from './inside.ts';
import type { Deflate } from './sheet.ts';

/** A colour value laid over white paper, both 0 to 255. */
function onWhite(value: number, clearness: number): number {
  return Math.round(255 + ((value - 255) * clearness) / 255);
}

/** Values of 8 bits from values of 8 or 16, one letter a byte. */
function eightBits(letters: string, bits: number): number[] {
  const step = bits / 8;
  return Array.from({ length: letters.length / step }, (_, at) => letters.charCodeAt(at * step));
}

/** The palette's place of each dot. Rows begin on a byte. */
function places({ data, width, height, bitsPerComponent: bits }: HeldPicture): number[] {
  const rowBytes = Math.ceil((width * bits) / 8);
  return Array.from({ length: width * height }, (_, dot) => {
    const bit = (dot % width) * bits;
    const byte = data.charCodeAt(Math.floor(dot / width) * rowBytes + (bit >> 3));
    return (byte >> (8 - bits - (bit & 7))) & ((1 << bits) - 1);
  });
}

function colours(picture: HeldPicture): number[] {
  const { palette } = picture;
  if (picture.colorSpace !== 'Indexed' || !palette)
    return eightBits(picture.data, picture.bitsPerComponent);
  return places(picture).flatMap((place) => palette.slice(3 * place, 3 * place + 3));
}

/** Red, green and blue or grey of each dot as it looks on paper, one letter a byte. */
function flattened(picture: HeldPicture, mask: string): string {
  const values = colours(picture);
  const clear = eightBits(mask, picture.sMaskBitsPerComponent ?? 8);
  const channels = values.length / clear.length;
  return values
    .map((value, at) =>
      String.fromCharCode(onWhite(value, clear[Math.floor(at / channels)] ?? 255)),
    )
    .join('');
}

/**
 * Takes a picture's clearness away, since sheets lie on white paper: archival files do best
 * without any transparency (ISO 19005-2, 6.2.10), and some printers do too.
 */
export function makeOpaque(picture: HeldPicture): void {
  if (picture.sMask === undefined) return;
  picture.data = flattened(picture, picture.sMask);
  picture.sMask = undefined;
  picture.bitsPerComponent = 8;
  if (picture.colorSpace === 'Indexed') picture.colorSpace = 'DeviceRGB';
}

/** Packs the dots of a picture that is held without compression. */
export function packPicture(picture: HeldPicture, deflate: Deflate): void {
  picture.data = deflate(picture.data);
  picture.filter = 'FlateDecode';
}
