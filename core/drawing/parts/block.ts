import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { baseline, letter, widthOf, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { line } from '../shapes.ts';

/** A block of the sheet's lower band: laid once, so that its height is known before its place. */
export interface Block {
  readonly height: PaperMm;
  draw(x: PaperMm, y: PaperMm): Item[];
}

/** A block that lays its items once for as long as it is drawn at one place. */
export function drawnOnce<B extends Block>(block: B): B {
  let drawn: { x: PaperMm; y: PaperMm; items: Item[] } | undefined;
  return {
    ...block,
    draw: (x, y) => {
      if (drawn?.x !== x || drawn.y !== y) drawn = { x, y, items: block.draw(x, y) };
      return drawn.items;
    },
  };
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
  /** A further line of the row above it. */
  readonly continues?: boolean;
}

/** Kept free at the right of a cell. */
export const cellGap: PaperMm = 0.8;

/**
 * The columns with the room that their words need; the widest of them gives and takes it. Where it
 * would have to give more than half of its own, for figures that nobody measured, all stay.
 */
export function fittingColumns(
  kit: Kit,
  columns: readonly TableColumn[],
  rows: readonly TableRow[],
): TableColumn[] {
  const needs = columns.map(({ width }, at) => {
    const widest = (face: 'bold' | 'regular') => {
      const all = rows.filter(({ bold }) => (face === 'bold') === (bold ?? false));
      const texts = new Set(all.map(({ cells }) => cells[at] ?? ''));
      return Math.max(0, ...[...texts].map((text) => widthOf(kit, text, { face })));
    };
    const need = Math.max(widest('bold'), widest('regular')) + cellGap;
    return { need, fits: need <= width };
  });
  if (needs.every(({ fits }) => fits)) return [...columns];
  const most = Math.max(...columns.map(({ width }) => width));
  const taker = columns.findIndex(({ width }) => width === most);
  const total = columns.reduce((sum, { width }) => sum + width, 0);
  const others = needs.reduce((sum, { need }, at) => sum + (at === taker ? 0 : need + cellGap), 0);
  if (total - others < most / 2) return [...columns];
  return columns.map((column, at) => ({
    ...column,
    width: at === taker ? total - others : needs[at]!.need + cellGap,
  }));
}

/** Rows of which one cell goes on on further lines where it is too wide for its column. */
export function unfolded(
  kit: Kit,
  rows: readonly TableRow[],
  at: number,
  width: PaperMm,
): TableRow[] {
  return rows.flatMap((row) => {
    const look = { face: row.bold ? 'bold' : 'regular' } as const;
    const [first = '', ...more] = wrapped(kit, row.cells[at] ?? '', width - cellGap, look);
    const cells = row.cells.map((cell, one) => (one === at ? first : cell));
    const under = more.map((text) => ({
      ...row,
      cells: row.cells.map((_, one) => (one === at ? text : '')),
      continues: true,
    }));
    return [{ ...row, cells }, ...under];
  });
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
  more: string = kit.words.moreFindings,
): TableRow[] {
  const most = Math.max(1, Math.floor(height / lineHeight('small') + 1e-9));
  if (rows.length <= most) return [...rows];
  let kept = most - 1;
  while (kept > 0 && rows[kept]!.continues) kept -= 1;
  const left = rows.slice(kept).filter(({ continues }) => !continues).length;
  const cells = [...Array<string>(at).fill(''), `${left} ${more}`];
  return [...rows.slice(0, kept), { cells }];
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
      const start = anchor === 'start' ? left : left + width - cellGap;
      left += width;
      return letter(kit, cells[at] ?? '', start, y + rowAt * pitch + baseline('small'), {
        anchor,
        face: bold ? 'bold' : 'regular',
        widest: width - cellGap,
        source,
      });
    });
  });
}
