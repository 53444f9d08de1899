import type { PageAxis } from '../../items.ts';
import type { View } from '../../parts/columns.ts';
import { paperLength, stretchesOf } from '../../scale.ts';

/** Where depth and diameters lie in a view, as plain data. */
export function pageAxis({ axis, body, columns, widthScale }: View): PageAxis {
  const { fromM, toM, scale } = axis;
  const { strikes, ground, section } = columns;
  return {
    box: body,
    fromM,
    toM,
    stretches: stretchesOf(axis),
    mmPerM: paperLength(1, scale),
    ...(widthScale !== undefined && { mmPerMm: 1 / widthScale }),
    spans: { water: strikes, ground, section },
  };
}
