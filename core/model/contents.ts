import { cylinderLitres, ringLitres, type DepthM, type Litres } from '../base/units.ts';
import type { WellCell } from './column.ts';
import { sumKnown } from './volumes.ts';
import type { ContentsModel, StringModel } from './wellModel.ts';

/** What a string holds in one cell: its inside, less the next string that stands in it. */
function heldLitres(cell: WellCell, index: number): Litres | undefined {
  const at = cell.pipes.findIndex(({ string }) => string.index === index);
  const [pipe, inner] = [cell.pipes[at], cell.pipes[at + 1]];
  const lengthM = cell.toM - cell.fromM;
  if (!pipe) return 0;
  if (pipe.insideMm === undefined) return undefined;
  if (!inner) return cylinderLitres(pipe.insideMm, lengthM);
  if (inner.outsideMm === undefined || inner.outsideMm > pipe.insideMm) return undefined;
  return ringLitres(pipe.insideMm, inner.outsideMm, lengthM);
}

/**
 * What each string holds, from its top to its foot. A string of which an inside is not known is
 * left out. `cells` are those of the whole column, parted at `restM`, the latest rest level.
 */
export function resolveContents(
  cells: readonly WellCell[],
  strings: readonly StringModel[],
  restM: DepthM | undefined,
): ContentsModel[] {
  return strings.flatMap(({ index, topM, bottomM }) => {
    const held = cells.map((cell) => heldLitres(cell, index));
    const litres = sumKnown(held);
    if (litres === undefined) return [];
    const whole = { string: index, fromM: topM, toM: bottomM, litres };
    if (restM === undefined) return [whole];
    const wet = held.filter((_, at) => (cells[at]?.fromM ?? -Infinity) >= restM);
    return [{ ...whole, waterLitres: sumKnown(wet) ?? 0 }];
  });
}
