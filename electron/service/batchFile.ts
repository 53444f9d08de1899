import { ok, type Result } from '../../core/base/result.ts';
import type { Takes } from '../../core/contract/calls.ts';
import { joinSheets } from './joinedSheet.ts';
import { asBuiltSheet, paperBasis, type PaperParts } from './paperFiles.ts';
import { batchFileName } from './paperNames.ts';
import type { Sheet } from './sheet.ts';

/** The sheets of several wells in one file. */
export interface BatchFile {
  readonly fileName: string;
  readonly pdf: Uint8Array;
  /** Wells with something typed that their sheet does not show. */
  readonly unrevised: number;
}

/** The as-built sheets of some wells in the order given; refused as a whole where one is. */
export function batchFile(
  parts: PaperParts,
  { ids, ...wish }: Takes<'papers.batch'>,
): Result<BatchFile> {
  const basis = paperBasis(parts);
  const sheets: Sheet[] = [];
  let unrevised = 0;
  for (const id of ids) {
    const made = asBuiltSheet(parts, { id, ...wish }, basis);
    if (!made.ok) return made;
    sheets.push(made.value.sheet);
    if (made.value.unrevised) unrevised += 1;
  }
  const joined = joinSheets(sheets, { fonts: parts.fonts, madeAt: parts.clock() });
  if (!joined.ok) return joined;
  const fileName = batchFileName(ids.length, wish.paper, wish.language);
  return ok({ fileName, pdf: joined.value.pdf(), unrevised });
}
