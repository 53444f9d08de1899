import type { PaperMm } from '../base/units.ts';
import type { Box } from './items.ts';

export const paperNames = ['A4', 'A3'] as const;
export type PaperName = (typeof paperNames)[number];

/** Upright, or lying on its long side. */
export const orientations = ['portrait', 'landscape'] as const;
export type Orientation = (typeof orientations)[number];

export interface Paper {
  readonly name: PaperName;
  readonly orientation: Orientation;
  readonly width: PaperMm;
  readonly height: PaperMm;
  /** The drawing space inside the frame line. */
  readonly frame: Box;
}

/** Margins after ISO 5457 (from memory): the filing side is the left one, however the sheet lies. */
const filing: PaperMm = 20;
const edge: PaperMm = 10;

function paper(name: PaperName, width: PaperMm, height: PaperMm): Paper {
  const frame = { x: filing, y: edge, width: width - filing - edge, height: height - 2 * edge };
  return { name, orientation: width > height ? 'landscape' : 'portrait', width, height, frame };
}

/**
 * ISO 216 sizes; the frame keeps 20 mm on the filing side and 10 mm elsewhere, which also keeps
 * clear of the edge that office printers cannot reach.
 */
const sheets: Readonly<Record<PaperName, Readonly<Record<Orientation, Paper>>>> = {
  A4: { portrait: paper('A4', 210, 297), landscape: paper('A4', 297, 210) },
  A3: { portrait: paper('A3', 297, 420), landscape: paper('A3', 420, 297) },
};

/** How a size lies where nobody chose: A4 upright, A3 lying (ISO 5457, from memory). */
export const usualOrientation: Readonly<Record<PaperName, Orientation>> = {
  A4: 'portrait',
  A3: 'landscape',
};

export function paperOf(name: PaperName, orientation: Orientation = usualOrientation[name]): Paper {
  return sheets[name][orientation];
}
