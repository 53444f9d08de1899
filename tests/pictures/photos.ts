import type { PhotoImages } from '../../core/drawing/parts/photos.ts';
import type { Photo } from '../../core/record/photos.ts';
import { jpegOf } from './jpeg.ts';
import type { Paint } from './png.ts';

/** Sizes in pixels by how a camera was held; the wide one is stitched of several. */
export const shapes = {
  landscape: [160, 120],
  portrait: [120, 160],
  panorama: [240, 40],
} as const;
export type Shape = keyof typeof shapes;

/** Slanting bands, each picture's its own, so that a stretched one shows. */
const bands =
  (seed: number): Paint =>
  (x, y) => {
    const shade = (x + y * (1 + (seed % 3)) + seed * 40) % 256;
    return [shade, shade, shade];
  };

/** A hash that looks like one, for a picture that never was in an archive. */
export const hashOf = (number: number) => number.toString(16).padStart(64, '0');

/** Photos of the given shapes in turn, with their pictures by hash. */
export function photosOf(
  count: number,
  turn: readonly Shape[],
  more: Partial<Photo> = {},
): { photos: Photo[]; images: PhotoImages } {
  const all = Array.from({ length: count }, (_, at) => {
    const [width, height] = shapes[turn[at % turn.length]!];
    const data = `data:image/jpeg;base64,${jpegOf(width, height, bands(at)).toString('base64')}`;
    return { hash: hashOf(at + 1), file: `photo ${at + 1}.jpg`, width, height, data };
  });
  return {
    photos: all.map(({ hash, file, width, height }) => ({ hash, file, width, height, ...more })),
    images: Object.fromEntries(all.map(({ hash, ...image }) => [hash, image])),
  };
}
