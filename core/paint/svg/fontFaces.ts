import { faceIds, type FaceId } from '../../base/text/metrics.ts';
import { base64 } from './base64.ts';
import { familyOf } from './family.ts';

/** Style sheet that carries the given TrueType files inside it, for `paintSvg`. */
export function fontFaces(files: Readonly<Record<FaceId, Uint8Array>>): string {
  return faceIds
    .map((face) => {
      const address = `data:font/ttf;base64,${base64(files[face])}`;
      return `@font-face{font-family:${familyOf(face)};src:url(${address})}`;
    })
    .join('');
}
