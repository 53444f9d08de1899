import type { DepthM, PaperMm } from '../../../base/units.ts';
import { paperLength } from '../../scale.ts';
import type { View } from '../columns.ts';
import { layColumns } from '../layColumns.ts';

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
  const fixed = (width: PaperMm) => ({ least: width, wanted: width });
  const columns = layColumns(x, left + middle + right, {
    casing: fixed(left),
    section: fixed(middle),
    fill: fixed(right),
  });
  return {
    axis: { fromM, toM, scale, top: y },
    columns,
    body: { x, y, width: left + middle + right, height: shownHeight(shown) },
    widthScale: scale,
    first,
    last: true,
  };
}
