import type { DepthM, PaperMm } from '../../../base/units.ts';
import { paperLength } from '../../scale.ts';
import type { Columns, View } from '../columns.ts';

interface Shown {
  readonly fromM: DepthM;
  readonly toM: DepthM;
  /** The same down and across. */
  readonly scale: number;
  /** Widths of the words at the left, the section, the words at the right. */
  readonly widths: readonly [PaperMm, PaperMm, PaperMm];
  /** Whether the upper end is that of the well. */
  readonly first: boolean;
}

/** Height of a view of some depths. */
export function shownHeight({ fromM, toM, scale }: Shown): PaperMm {
  return paperLength(toM - fromM, scale);
}

/** A view of a part of the well by its upper left corner, for the parts that draw the section. */
export function detailView(shown: Shown, x: PaperMm, y: PaperMm): View {
  const { fromM, toM, scale, widths, first } = shown;
  const [left, middle, right] = widths;
  const casing = { x, width: left };
  const section = { x: x + left, width: middle };
  const fill = { x: x + left + middle, width: right };
  const columns: Columns = {
    depth: { x, width: 0 },
    water: { x, width: 0 },
    ground: { x, width: 0 },
    description: { x, width: 0 },
    rate: { x, width: 0 },
    casing,
    section,
    fill,
  };
  return {
    axis: { fromM, toM, scale, top: y },
    columns,
    body: { x, y, width: left + middle + right, height: shownHeight(shown) },
    widthScale: scale,
    first,
    last: true,
  };
}
