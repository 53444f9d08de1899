import type { PaperMm } from '../../base/units.ts';
import { dayFigure } from '../figures.ts';
import type { Kit } from '../kit.ts';
import { detailWordsIn } from './details/words/languages.ts';
import type { Piece } from './flow/part.ts';
import { rowPiece, titlePiece, type Cell } from './flow/pieces.ts';
import type { RevisionNote } from './revisionNote.ts';

const widths = { number: 10, on: 20, by: 30 } as const;

/** Without a column for names where nobody is named. */
function cellsOf(
  [number, on, by, changes]: readonly [string, string, string, string],
  width: PaperMm,
  named: boolean,
  bold = false,
): Cell[] {
  const first = widths.number + widths.on + (named ? widths.by : 0);
  return [
    { width: widths.number, text: number, bold },
    { width: widths.on, text: on, bold },
    ...(named ? [{ width: widths.by, text: by, bold }] : []),
    { width: width - first, text: changes, bold },
  ];
}

/** One row for each change, so that a revision with many goes on in the next column. */
function rowsOf(kit: Kit, note: RevisionNote, width: PaperMm, named: boolean, head: Piece) {
  const { number, on, by = '', changes } = note;
  return changes.map((change, at) => {
    const first = at === 0 ? [String(number ?? '–'), dayFigure(on), by] : ['', '', ''];
    const cells = [...first, change] as unknown as readonly [string, string, string, string];
    const rule = at === changes.length - 1 ? 'hair' : 'none';
    return rowPiece(kit, cellsOf(cells, width, named), { head, rule });
  });
}

/** The table of revisions, a draft and the newest first; none without revisions. */
export function revisionPieces(
  kit: Kit,
  revisions: readonly RevisionNote[],
  width: PaperMm,
): Piece[] {
  if (revisions.length === 0) return [];
  const { revisions: title, columns } = detailWordsIn(kit.words.language);
  const { revision, on, by, changes } = columns;
  const named = revisions.some((one) => one.by !== undefined);
  const heads = cellsOf([revision, on, by, changes], width, named, true);
  const head = rowPiece(kit, heads, { rule: 'thin' });
  const newest = revisions.toSorted((a, b) => (b.number ?? Infinity) - (a.number ?? Infinity));
  return [
    titlePiece(kit, title, width),
    { ...head, keeps: true },
    ...newest.flatMap((note) => rowsOf(kit, note, width, named, head)),
  ];
}
