import { ok, type Result } from '../../core/base/result.ts';
import { csvLine } from '../../core/exchange/csv/csvLine.ts';
import type { Loss } from '../../core/exchange/outgoing.ts';
import type { Added, PartedFile } from '../../core/exchange/writer.ts';
import { writerOf } from '../../core/exchange/writers.ts';
import type { WrittenFormat } from '../../core/exchange/writtenFormats.ts';
import type { LossRow } from '../../core/contract/exportShape.ts';
import { kindOfPlace } from '../../core/record/prune.ts';
import type { WellFilter } from '../../core/record/wellFilter.ts';
import type { Archive } from '../archive/archive.ts';
import { outgoingWells } from './outgoingWells.ts';

/** What is to go out, and how. */
export interface ExportWish {
  readonly into: WrittenFormat;
  readonly filter: WellFilter;
  /** Name of the files without their ending. */
  readonly name: string;
  /** ISO 8601. */
  readonly madeAt: string;
  readonly bom?: boolean;
}

/** Takes what goes to the end of each part, in turn. */
export type PutPart = (added: Added) => void;

export interface Exported {
  readonly wells: number;
  /** Wells with something typed that did not go out. */
  readonly unrevised: number;
  readonly files: readonly PartedFile[];
  /** What did not go out, by kind, what most wells lose first. */
  readonly losses: readonly LossRow[];
}

/** Counts losses by kind, each well once. */
function lossCount() {
  const rows = new Map<string, { row: LossRow; last: number }>();
  return {
    add(well: number, losses: readonly Loss[]): void {
      for (const { well: name, path, sentence } of losses) {
        const place = kindOfPlace(path);
        const key = `${place}\n${sentence}`;
        const known = rows.get(key);
        if (known?.last === well) continue;
        const wells = (known?.row.wells ?? 0) + 1;
        const first = known?.row.first ?? name;
        rows.set(key, { row: { path: place, sentence, wells, first }, last: well });
      }
    },
    rows: (): LossRow[] =>
      [...rows.values()]
        .map(({ row }) => row)
        .sort((a, b) => b.wells - a.wells || (a.path < b.path ? -1 : 1)),
  };
}

const lossPart = 'losses';

/**
 * Writes the wells of an archive in a format, one after the other. What does not go out is told in
 * a table of its own beside the files, each loss with its well and field.
 */
export async function exportWells(
  archive: Archive,
  { into, filter, ...writing }: ExportWish,
  put: PutPart,
): Promise<Result<Exported>> {
  const writer = writerOf(into, writing);
  const count = lossCount();
  let [wells, unrevised] = [0, 0];
  for (const well of outgoingWells(archive, filter)) {
    if (!well.ok) return well;
    const { added, losses } = writer.well(well.value);
    added.forEach(put);
    for (const { well: name, path, sentence } of losses)
      put({ part: lossPart, content: csvLine([name, path, sentence]) });
    count.add(wells, losses);
    wells += 1;
    if (well.value.unrevised) unrevised += 1;
  }
  const { added, files } = await writer.end();
  added.forEach(put);
  const losses = count.rows();
  put({ part: 'lossHead', content: csvLine(['well', 'field', 'what became of it']) });
  const lossFile = { name: `${writing.name}-losses.csv`, parts: ['lossHead', lossPart] };
  return ok({ wells, unrevised, files: losses.length > 0 ? [...files, lossFile] : files, losses });
}
