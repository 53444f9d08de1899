import type { PaperMm } from '../../base/units.ts';
import type { PathItem } from '../items.ts';
import { dash, moved, strokes, wave, type MarkLook } from './marks.ts';

/**
 * Lines that go on from tile to tile. Each reaches beyond both edges in its own direction, so
 * that the square end of its stroke never shows as a nick in the seam.
 */
const beyond: PaperMm = 0.5;

export function level(width: PaperMm, y: PaperMm, look: MarkLook = {}): PathItem {
  return moved(dash(width + 2 * beyond, look), [width / 2, y]);
}

export function upright(height: PaperMm, x: PaperMm): PathItem {
  return moved(dash(height + 2 * beyond, { turn: 90 }), [x, height / 2]);
}

/** A wave of an even number of half waves to the tile, set off by `shift` half waves. */
export function wavy(
  width: PaperMm,
  y: PaperMm,
  halves: number,
  rise: PaperMm,
  shift = 0,
): PathItem {
  const half = width / halves;
  return moved(wave(half, halves + 4, rise), [(shift - 2) * half, y]);
}

/** Small sharp folds about a level line, `size` from crest to crest. */
export function folded(width: PaperMm, y: PaperMm, size: PaperMm): PathItem {
  const corners = Array.from({ length: 2 * Math.round(width / size) + 3 }, (_, one) => one - 1);
  return strokes([
    corners.map((one) => [(one * size) / 2, y + (one % 2 === 0 ? size / 3 : -size / 3)] as const),
  ]);
}

/** Parallels `step` apart that lean by `lean` to the right over the tile's height. */
export function leaning(width: PaperMm, height: PaperMm, step: PaperMm, lean: PaperMm): PathItem[] {
  const past = (lean / height) * beyond;
  return Array.from({ length: Math.round(width / step) }, (_, one) =>
    strokes([
      [
        [one * step - past, height + beyond],
        [one * step + lean + past, -beyond],
      ],
    ]),
  );
}
