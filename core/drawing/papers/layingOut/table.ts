import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { letter, widthOf, wrapped, type TextLook } from '../../letters.ts';
import { letterings, lineHeight, solid, type Lettering } from '../../pens.ts';
import { corners, group, hatched, line, rectangle } from '../../shapes.ts';

/**
 * What stands in a cell: words, a figure large enough for arm's length, a box to tick, a line to
 * write on, a patch of hatch, or nothing.
 */
export type Cell =
  | { readonly kind: 'words'; readonly text: string; readonly bold?: boolean }
  | {
      readonly kind: 'figure';
      readonly text: string;
      readonly bold?: boolean;
      readonly framed?: boolean;
    }
  | { readonly kind: 'sacks'; readonly count: string; readonly each: string }
  | { readonly kind: 'letter'; readonly text: string; readonly hatch: string }
  | { readonly kind: 'tick' | 'line' };

export interface Column {
  readonly width: PaperMm;
  readonly head: string;
  readonly anchor?: 'start' | 'end';
}

export interface Row {
  readonly cells: readonly Cell[];
  readonly source?: RecordPath | undefined;
  /** Words over the whole width instead of cells. */
  readonly over?: string;
}

export interface Table {
  readonly name: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** Rows no lower than this: figures of 3.5 mm with a gap that keeps them apart. */
export const leastRow: PaperMm = 5.1;
const pad: PaperMm = 0.9;
const titleHeight: PaperMm = 5;
const wordsPitch = lineHeight('normal');

export function widthOfTable({ columns }: Table): PaperMm {
  return columns.reduce((sum, { width }) => sum + width, 0);
}

function headLines(kit: Kit, { head, width }: Column): string[] {
  return wrapped(kit, head, width - 2 * pad, { lettering: 'normal', face: 'bold' });
}

/** Height of title and heads, which stand on each page that the table reaches. */
export function headHeight(kit: Kit, { columns }: Table): PaperMm {
  const most = Math.max(...columns.map((column) => headLines(kit, column).length));
  return most === 0 ? titleHeight : titleHeight + most * wordsPitch + 0.8;
}

function linesOf(kit: Kit, text: string, width: PaperMm, bold = false): string[] {
  return wrapped(kit, text, width - 2 * pad, {
    lettering: 'normal',
    face: bold ? 'bold' : 'regular',
  });
}

/** Height of a row: what its words need, and at least that of a figure. */
export function rowHeight(kit: Kit, table: Table, row: Row): PaperMm {
  const lines =
    row.over === undefined
      ? row.cells.map((cell, at) =>
          cell.kind === 'words'
            ? linesOf(kit, cell.text, table.columns[at]!.width, cell.bold).length
            : 1,
        )
      : [linesOf(kit, row.over, widthOfTable(table), true).length];
  const most = Math.max(...lines);
  return most < 2 ? leastRow : most * wordsPitch + 1;
}

/** What a table takes in all; one without rows takes nothing. */
export function tableHeight(kit: Kit, table: Table): PaperMm {
  if (table.rows.length === 0) return 0;
  const rows = table.rows.reduce((sum, row) => sum + rowHeight(kit, table, row), 0);
  return headHeight(kit, table) + rows;
}

const falling: readonly Lettering[] = ['large', 'normal', 'small'];

/** The largest lettering in which a figure fits; a figure that fits in none is cut. */
export function fittingFigure(kit: Kit, text: string, room: PaperMm, bold = false): TextLook {
  const face = bold ? 'bold' : 'regular';
  const fits = falling.find((lettering) => widthOf(kit, text, { lettering, face }) <= room);
  return { lettering: fits ?? 'small', face, widest: room };
}

interface Place {
  readonly x: PaperMm;
  readonly y: PaperMm;
  readonly width: PaperMm;
  readonly height: PaperMm;
}

function drawWords(
  kit: Kit,
  lines: readonly string[],
  place: Place,
  look: TextLook & { readonly lettering: Lettering },
): Item[] {
  const capital = letterings[look.lettering];
  const first = place.y + (place.height - (lines.length - 1) * wordsPitch + capital) / 2;
  const x = look.anchor === 'end' ? place.x + place.width - pad : place.x + pad;
  return lines.flatMap((text, at) => letter(kit, text, x, first + at * wordsPitch, look));
}

function middled(kit: Kit, text: string, place: Place, look: TextLook): Item[] {
  const y = place.y + (place.height + letterings[look.lettering ?? 'small']) / 2;
  const x = look.anchor === 'end' ? place.x + place.width - pad : place.x + pad;
  return letter(kit, text, x, y, look);
}

/** The figure, and what a sack weighs behind it. */
function drawSacks(kit: Kit, count: string, each: string, place: Place, look: TextLook): Item[] {
  const room = place.width - 2 * pad;
  const behind = { lettering: 'normal', widest: room } as const;
  const kept = each === '' ? 0 : Math.min(widthOf(kit, each, behind) + 1, room * 0.7);
  const figure = { ...fittingFigure(kit, count, room - kept, true), ...look };
  const after = { ...place, x: place.x + widthOf(kit, count, figure) + (kept > 0 ? 1 : 0) };
  return [
    ...middled(kit, count, place, figure),
    ...middled(kit, each, after, { ...behind, ...look, widest: kept }),
  ];
}

function drawCell(
  kit: Kit,
  cell: Cell,
  place: Place,
  anchor: 'start' | 'end',
  source: RecordPath | undefined,
): Item[] {
  const { x, y, width, height } = place;
  const room = width - 2 * pad;
  switch (cell.kind) {
    case 'words': {
      const face = cell.bold ? 'bold' : 'regular';
      const lines = linesOf(kit, cell.text, width, cell.bold);
      return drawWords(kit, lines, place, { lettering: 'normal', face, anchor, source });
    }
    case 'figure': {
      const look = { ...fittingFigure(kit, cell.text, room, cell.bold), anchor, source };
      const frame = { x: x + 0.35, y: y + 0.35, width: width - 0.7, height: height - 0.7 };
      return [
        ...(cell.framed ? [rectangle(frame, { stroke: solid('medium'), source })] : []),
        ...middled(kit, cell.text, place, look),
      ];
    }
    case 'sacks':
      return drawSacks(kit, cell.count, cell.each, place, { source });
    case 'letter': {
      const box = { x: x + 7, y: y + 0.6, width: width - 7.8, height: height - 1.2 };
      const look = { ...fittingFigure(kit, cell.text, 6.2, true), source };
      return [
        ...middled(kit, cell.text, place, look),
        hatched(corners(box), cell.hatch, source, '#ffffff'),
        rectangle(box, { stroke: solid('thin'), source }),
      ];
    }
    case 'tick': {
      const side = 3.6;
      const box = {
        x: x + (width - side) / 2,
        y: y + (height - side) / 2,
        width: side,
        height: side,
      };
      return [rectangle(box, { stroke: solid('narrow') })];
    }
    case 'line':
      return [line([x + 1, y + height - 0.9], [x + width - 1, y + height - 0.9], solid('thin'))];
  }
}

function drawRow(kit: Kit, table: Table, row: Row, x: PaperMm, y: PaperMm, height: PaperMm): Item {
  const width = widthOfTable(table);
  const rule = line([x, y + height], [x + width, y + height], solid('hair'));
  const { source } = row;
  if (row.over !== undefined) {
    const look = { lettering: 'normal', face: 'bold', source } as const;
    const lines = linesOf(kit, row.over, width, true);
    const over = drawWords(kit, lines, { x, y, width, height }, look);
    return group('row', [...over, rule], { source });
  }
  let left = x;
  const cells = table.columns.flatMap((column, at) => {
    const place = { x: left, y, width: column.width, height };
    left += column.width;
    return drawCell(kit, row.cells[at]!, place, column.anchor ?? 'start', source);
  });
  return group('row', [...cells, rule], { source });
}

function drawHeads(kit: Kit, table: Table, says: string, x: PaperMm, y: PaperMm): Item[] {
  const width = widthOfTable(table);
  const height = headHeight(kit, table);
  const rest = height - titleHeight - 0.4;
  let left = x;
  const heads = table.columns.flatMap((column) => {
    const place = { x: left, y: y + titleHeight, width: column.width, height: rest };
    left += column.width;
    const look = { lettering: 'normal', face: 'bold', anchor: column.anchor ?? 'start' } as const;
    return drawWords(kit, headLines(kit, column), place, look);
  });
  const title = says === '' ? table.title : `${table.title}, ${says}`;
  return [
    ...letter(kit, title, x, y + titleHeight - 1.3, {
      ...fittingTitle(kit, title, width),
      face: 'bold',
    }),
    line([x, y + titleHeight], [x + width, y + titleHeight], solid('medium')),
    ...heads,
    line([x, y + height], [x + width, y + height], solid('narrow')),
  ];
}

function fittingTitle(kit: Kit, title: string, room: PaperMm): TextLook {
  const fits = (['normal', 'small'] as const).find(
    (lettering) => widthOf(kit, title, { lettering, face: 'bold' }) <= room,
  );
  return { lettering: fits ?? 'small', widest: room };
}

/** Which rows of a table stand on a page, how much each is stretched, and what the title adds. */
export interface Shown {
  readonly from: number;
  readonly to: number;
  readonly stretch: PaperMm;
  /** `goes on from sheet 1`. */
  readonly says: string;
}

/** A table, or some of its rows, by its upper left corner. */
export function drawTable(kit: Kit, table: Table, shown: Shown, x: PaperMm, y: PaperMm): Item {
  if (table.rows.length === 0) return group(table.name, []);
  let top = y + headHeight(kit, table);
  const rows = table.rows.slice(shown.from, shown.to).map((row) => {
    const height = rowHeight(kit, table, row) + shown.stretch;
    const item = drawRow(kit, table, row, x, top, height);
    top += height;
    return item;
  });
  return group(table.name, [...drawHeads(kit, table, shown.says, x, y), ...rows]);
}

/** All rows of a table as high as they must be. */
export const whole: Shown = { from: 0, to: Infinity, stretch: 0, says: '' };
