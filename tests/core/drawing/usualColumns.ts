import type { SwitchedColumn } from '../../../core/drawing/parts/columnNames.ts';
import { layColumns, usualWidths, type Columns } from '../../../core/drawing/parts/layColumns.ts';

const switched: Readonly<Record<SwitchedColumn, { least: number; wanted: number }>> = {
  strikes: { least: 7.4, wanted: 7.7 },
  samples: { least: 4.2, wanted: 5 },
  grain: { least: 11, wanted: 14 },
  description: usualWidths.description,
  colour: { least: 13.6, wanted: 15 },
  moisture: { least: 11.6, wanted: 13 },
  sieve: { least: 9, wanted: 10 },
  rate: { least: 9.6, wanted: 12 },
};

/** Columns over a width, of the switched ones those that are named. */
export function columnsOver(
  x: number,
  width: number,
  shown: readonly SwitchedColumn[] = ['strikes', 'samples', 'description', 'rate'],
): Columns {
  const asked = Object.fromEntries(shown.map((name) => [name, switched[name]]));
  const { depth, ground, casing, section, fill } = usualWidths;
  return layColumns(x, width, { depth, ground, casing, section, fill, ...asked });
}
