import type { PaperMm } from '../../base/units.ts';
import type { HatchTile, PathItem } from '../items.ts';
import { wrap } from './wrap.ts';

/** A hatch by itself, and the parts of the one mark that speaks for it in a mixture. */
export interface Hatch {
  readonly tile: HatchTile;
  readonly single: readonly PathItem[];
}

/** Every side of a tile divides this length, so that any two tiles fit into one square of it. */
export const commonSide: PaperMm = 12;

export function hatch(
  width: PaperMm,
  height: PaperMm,
  marks: readonly PathItem[],
  ...single: readonly PathItem[]
): Hatch {
  if (commonSide % width !== 0 || commonSide % height !== 0)
    throw new Error(`A tile of ${width} by ${height} mm does not divide ${commonSide} mm`);
  return { tile: wrap(width, height, marks), single };
}
