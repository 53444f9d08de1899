import type { FaceId } from '../../base/text/metrics.ts';

/** Name under which a face of ours is known to style sheets; never that of an installed font. */
export function familyOf(face: FaceId): string {
  return `borefolio-${face}`;
}
