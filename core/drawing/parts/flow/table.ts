import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Kit } from '../../kit.ts';
import type { Piece } from './part.ts';
import { rowPiece } from './pieces.ts';

export interface FlowColumn {
  readonly title: string;
  readonly width: PaperMm;
  readonly anchor?: 'start' | 'end';
}

export interface FlowRow {
  readonly cells: readonly string[];
  readonly bold?: readonly number[];
  readonly source?: RecordPath | undefined;
  /** The next row tells more of the same: no rule parts them, nor the foot of a column. */
  readonly goesOn?: boolean;
}

/** A table whose head stands above it again in each column that it goes on in. */
export function tablePieces(
  kit: Kit,
  columns: readonly FlowColumn[],
  rows: readonly FlowRow[],
): Piece[] {
  const heads = columns.map(({ title, width, anchor = 'start' }) => ({
    text: title,
    width,
    anchor,
    bold: true,
  }));
  const head = rowPiece(kit, heads, { rule: 'thin' });
  const body = rows.map(({ cells, bold = [], source, goesOn = false }) => ({
    ...rowPiece(
      kit,
      columns.map(({ width, anchor = 'start' }, at) => ({
        text: cells[at] ?? '',
        width,
        anchor,
        bold: bold.includes(at),
      })),
      { source, head, rule: goesOn ? 'none' : 'hair' },
    ),
    keeps: goesOn,
  }));
  return rows.length === 0 ? [] : [{ ...head, keeps: true }, ...body];
}
