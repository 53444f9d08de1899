import type { PaperMm } from '../base/units.ts';
import type { Box } from './items.ts';

export type PaperName = 'A4' | 'A3';

export interface Paper {
  readonly name: PaperName;
  readonly width: PaperMm;
  readonly height: PaperMm;
  /** The drawing space inside the frame line. */
  readonly frame: Box;
}

/**
 * ISO 216 sizes; frame after ISO 5457 (from memory): 20 mm on the filing side, 10 mm elsewhere,
 * which also keeps clear of the edge that office printers cannot reach. A4 upright, A3 lying.
 */
export const papers: Readonly<Record<PaperName, Paper>> = {
  A4: { name: 'A4', width: 210, height: 297, frame: { x: 20, y: 10, width: 180, height: 277 } },
  A3: { name: 'A3', width: 420, height: 297, frame: { x: 20, y: 10, width: 390, height: 277 } },
};
