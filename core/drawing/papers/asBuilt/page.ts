import type { PaperMm } from '../../../base/units.ts';
import type { View } from '../../parts/columns.ts';
import type { Rest } from './bodies.ts';

/** How a well is cut into pages and at which scale. */
export interface Plan {
  readonly scale: number;
  readonly views: readonly View[];
  readonly rest: Rest;
  /** Height kept under the well for findings and notes. */
  readonly remarksRoom: PaperMm;
  /** Height left free between what stands under the well and the marks, for details. */
  readonly spare: PaperMm;
}

/** Between the body's edge and the ends of the well, for half a figure; and at a match line. */
export const margin: PaperMm = 1.4;
export const matchMargin: PaperMm = 4.5;

export function hasOwnPage({ rest }: Plan): boolean {
  return rest === 'bandAndPage' || rest === 'ownPage';
}
