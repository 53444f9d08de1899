import type { PaperMm } from '../../base/units.ts';
import type { PieceModel, StringModel, WellModel } from '../../model/wellModel.ts';
import { depthFigure } from '../figures.ts';
import type { Kit } from '../kit.ts';
import { lineHeight } from '../pens.ts';
import {
  blockPad,
  blockTitle,
  blockTitleHeight,
  drawRows,
  fittingColumns,
  rowsWithin,
  unfolded,
  type Block,
  type TableColumn,
  type TableRow,
} from './block.ts';
import { pieceWords } from './section/casingCallouts.ts';

/** One piece: lengths and depths in metres to the centimetre, as a tape gives them. */
function pieceRow(kit: Kit, piece: PieceModel, number: number): TableRow {
  return {
    cells: [
      String(number),
      pieceWords(kit, piece),
      depthFigure(kit, piece.bottomM - piece.topM),
      piece.insertionM > 0 ? depthFigure(kit, piece.insertionM) : '–',
      depthFigure(kit, piece.topM),
      depthFigure(kit, piece.bottomM),
    ],
    source: piece.path,
  };
}

/** The pieces of a string, under its name where the well has more than one string. */
function stringRows(kit: Kit, string: StringModel, several: boolean): TableRow[] {
  const { tally } = kit.words;
  const name = string.name ?? `${tally.string} ${string.index + 1}`;
  const head: TableRow[] = several ? [{ cells: ['', name], bold: true, source: string.path }] : [];
  return [...head, ...string.pieces.map((piece, at) => pieceRow(kit, piece, at + 1))];
}

/** Every piece from the top down with its length, joint and depths, as many as the room holds. */
export function layTallyTable(
  kit: Kit,
  { strings }: WellModel,
  width: PaperMm,
  room: PaperMm,
): Block | undefined {
  if (strings.length === 0) return undefined;
  const { tally } = kit.words;
  const usual: TableColumn[] = [
    { width: 6, anchor: 'start' },
    { width: width - 50, anchor: 'start' },
    { width: 12, anchor: 'end' },
    { width: 10, anchor: 'end' },
    { width: 11, anchor: 'end' },
    { width: 11, anchor: 'end' },
  ];
  const heads: TableRow = {
    cells: [tally.piece, tally.what, tally.length, tally.insertion, tally.from, tally.to],
    bold: true,
  };
  const all = [heads, ...strings.flatMap((one) => stringRows(kit, one, strings.length > 1))];
  const columns = fittingColumns(kit, usual, all);
  const lines = unfolded(kit, all, 1, columns[1]!.width);
  const rows = rowsWithin(kit, lines, room - blockTitleHeight - blockPad, 1);
  return {
    height: blockTitleHeight + rows.length * lineHeight('small') + blockPad,
    draw: (x, y) => [
      ...blockTitle(kit, tally.title, x, y, width),
      ...drawRows(kit, columns, rows, x, y + blockTitleHeight),
    ],
  };
}
