import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { baseline, letter } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { line } from '../shapes.ts';

/** A block of the sheet's lower band: laid once, so that its height is known before its place. */
export interface Block {
  readonly height: PaperMm;
  draw(x: PaperMm, y: PaperMm): Item[];
}

export const blockTitleHeight: PaperMm = 4.6;
export const blockPad: PaperMm = 1.4;

/** The title of a block with the rule under it. */
export function blockTitle(
  kit: Kit,
  title: string,
  x: PaperMm,
  y: PaperMm,
  width: PaperMm,
): Item[] {
  const foot = y + blockTitleHeight - 0.6;
  return [
    ...letter(kit, title, x, y + baseline('small') + 0.2, { face: 'bold', widest: width }),
    line([x, foot], [x + width, foot], solid('thin')),
  ];
}

export interface TableColumn {
  readonly width: PaperMm;
  readonly anchor: 'start' | 'end';
}

export interface TableRow {
  readonly cells: readonly string[];
  readonly bold?: boolean;
  readonly source?: RecordPath | undefined;
}

/**
 * As many rows as stand in a height. Where it is too low, the last row says in its cell `at` how
 * many are left out, so that nothing is left out in silence.
 */
export function rowsWithin(
  kit: Kit,
  rows: readonly TableRow[],
  height: PaperMm,
  at: number,
): TableRow[] {
  const most = Math.max(1, Math.floor(height / lineHeight('small') + 1e-9));
  if (rows.length <= most) return [...rows];
  const says = `${rows.length - most + 1} ${kit.words.moreFindings}`;
  const cells = [...Array<string>(at).fill(''), says];
  return [...rows.slice(0, most - 1), { cells }];
}

/** Rows of cells on the small line pitch; a text too wide for its cell is cut. */
export function drawRows(
  kit: Kit,
  columns: readonly TableColumn[],
  rows: readonly TableRow[],
  x: PaperMm,
  y: PaperMm,
): Item[] {
  const pitch = lineHeight('small');
  return rows.flatMap(({ cells, bold, source }, rowAt) => {
    let left = x;
    return columns.flatMap(({ width, anchor }, at) => {
      const start = anchor === 'start' ? left : left + width - 0.8;
      left += width;
      return letter(kit, cells[at] ?? '', start, y + rowAt * pitch + baseline('small'), {
        anchor,
        face: bold ? 'bold' : 'regular',
        widest: width - 0.8,
        source,
      });
    });
  });
}
