import type { PaperMm } from '../../base/units.ts';
import type { PieceModel, StringModel, WellModel } from '../../model/wellModel.ts';
import { depthFigure } from '../figures.ts';
import type { Kit } from '../kit.ts';
import { widthOf } from '../letters.ts';
import { lineHeight } from '../pens.ts';
import { group } from '../shapes.ts';
import {
  blockPad,
  blockTitle,
  blockTitleHeight,
  cellGap,
  drawRows,
  fittingColumns,
  rowsWithin,
  unfolded,
  type Block,
  type TableColumn,
  type TableRow,
} from './block.ts';
import type { Piece } from './flow/part.ts';
import { gapPiece, titlePiece } from './flow/pieces.ts';
import { pieceWords } from './section/casingCallouts.ts';

/** A piece in as many words as stand on one line: its slots are told beside the section too. */
function pieceLine(kit: Kit, piece: PieceModel, room: PaperMm): string {
  const wordings = [2, 1, 0].map((details) => pieceWords(kit, piece, details));
  return wordings.find((words) => widthOf(kit, words) <= room) ?? wordings[0]!;
}

/** One piece: lengths and depths in metres to the centimetre, as a tape gives them. */
function pieceRow(kit: Kit, piece: PieceModel, number: number, room: PaperMm): TableRow {
  return {
    cells: [
      String(number),
      pieceLine(kit, piece, room),
      depthFigure(kit, piece.bottomM - piece.topM),
      piece.insertionM > 0 ? depthFigure(kit, piece.insertionM) : '–',
      depthFigure(kit, piece.topM),
      depthFigure(kit, piece.bottomM),
    ],
    source: piece.path,
  };
}

/** The pieces of a string, under its name where the well has more than one string. */
function stringRows(kit: Kit, string: StringModel, several: boolean, room: PaperMm): TableRow[] {
  const { tally } = kit.words;
  const name = string.name ?? `${tally.string} ${string.index + 1}`;
  const head: TableRow[] = several ? [{ cells: ['', name], bold: true, source: string.path }] : [];
  return [...head, ...string.pieces.map((piece, at) => pieceRow(kit, piece, at + 1, room))];
}

/** A tally's columns and rows in a width; the first row is its head. */
function tableIn(kit: Kit, { strings }: Pick<WellModel, 'strings'>, width: PaperMm) {
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
  const rowsFor = (room: PaperMm) => [
    heads,
    ...strings.flatMap((one) => stringRows(kit, one, strings.length > 1, room)),
  ];
  const columns = fittingColumns(kit, usual, rowsFor(Infinity));
  const words = columns[1]!.width;
  return { columns, words, rows: rowsFor(words - cellGap) };
}

/** A table of pieces that may have room for the first of its rows only. */
export interface TallyTable extends Block {
  /** How many rows it shows, heads counted; absent where it shows all. */
  readonly shows?: number;
}

/** Every piece from the top down with its length, joint and depths, as many as the room holds. */
export function layTallyTable(
  kit: Kit,
  model: Pick<WellModel, 'strings'>,
  width: PaperMm,
  room: PaperMm,
): TallyTable | undefined {
  if (model.strings.length === 0) return undefined;
  const { tally } = kit.words;
  const { columns, words, rows: all } = tableIn(kit, model, width);
  const lines = unfolded(kit, all, 1, words);
  const rows = rowsWithin(kit, lines, room - blockTitleHeight - blockPad, 1, tally.more);
  const shows = rows.slice(0, -1).filter(({ continues }) => !continues).length;
  return {
    height: blockTitleHeight + rows.length * lineHeight('small') + blockPad,
    ...(rows.length < lines.length && { shows }),
    draw: (x, y) => [
      group('tally', [
        ...blockTitle(kit, tally.title, x, y, width),
        ...drawRows(kit, columns, rows, x, y + blockTitleHeight),
      ]),
    ],
  };
}

/** The rows that a table did not show, to go on on a later page under their heads. */
export function tallyPieces(
  kit: Kit,
  model: Pick<WellModel, 'strings'>,
  width: PaperMm,
  shown: number,
): Piece[] {
  const { columns, words, rows } = tableIn(kit, model, width);
  const pieceOf = (row: TableRow): Piece => {
    const lines = unfolded(kit, [row], 1, words);
    return {
      height: lines.length * lineHeight('small'),
      draw: (x, y) => drawRows(kit, columns, lines, x, y),
    };
  };
  const head = pieceOf(rows[0]!);
  return [
    titlePiece(kit, kit.words.tally.goesOn, width),
    { ...head, keeps: true },
    ...rows.slice(shown).map((row) => ({ ...pieceOf(row), head, keeps: row.bold ?? false })),
    gapPiece(3),
  ];
}
