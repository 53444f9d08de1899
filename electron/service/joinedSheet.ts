import { ok, refused, type Result } from '../../core/base/result.ts';
import { joinDrawings } from '../../core/drawing/papers/joined.ts';
import type { ShippedFonts } from '../files/fonts.ts';
import { sha256Hex } from '../seal/hash.ts';
import { sheetOf, type Sheet } from './sheet.ts';

/** Most pages of one print file: the whole document lies in memory while it is made. */
export const mostPages = 250;

interface MadeWith {
  readonly fonts: ShippedFonts;
  /** ISO 8601. */
  readonly madeAt: string;
}

/** Numbers of the wells, as many as a title can show. */
function titleOf(sheets: readonly Sheet[]): string {
  const numbers = sheets.map(({ drawing }) => drawing.wellNumber ?? '–');
  const more = numbers.length > 6 ? `, … (${numbers.length})` : '';
  return numbers.slice(0, 6).join(', ') + more;
}

/** Sheets one behind the other as one, for one print file. Refused where there are none, or too many pages. */
export function joinSheets(sheets: readonly Sheet[], { fonts, madeAt }: MadeWith): Result<Sheet> {
  const pages = sheets.reduce((sum, { drawing }) => sum + drawing.pages.length, 0);
  if (pages > mostPages)
    return refused(
      'tooManyPages',
      `These are ${pages} pages; one print file holds ${mostPages} at most. Choose fewer wells.`,
    );
  const drawings = sheets.map(({ drawing }) => drawing);
  const [first] = drawings;
  if (!first)
    return refused('nothingToPrint', 'No well was chosen. Choose at least one, then print.');
  const { subject, language } = first;
  const paperId = sha256Hex(drawings.map((one) => one.paperId).join(' ')).slice(0, 32);
  const joint = { title: titleOf(sheets), subject, language, madeAt, paperId };
  const findings = sheets.flatMap((sheet) => sheet.findings);
  return ok(sheetOf(joinDrawings(drawings, joint), findings, { fonts }));
}
