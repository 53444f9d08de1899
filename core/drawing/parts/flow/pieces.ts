import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Kit } from '../../kit.ts';
import { baseline, fitted, letter, lettered, wrapped, type TextLook } from '../../letters.ts';
import { lineHeight, solid } from '../../pens.ts';
import { group, line } from '../../shapes.ts';
import { blockTitle, blockTitleHeight, cellGap } from '../block.ts';
import type { Piece } from './part.ts';

const pitch = lineHeight('small');

/** A title that stands with what is under it. */
export function titlePiece(kit: Kit, title: string, width: PaperMm): Piece {
  return {
    height: blockTitleHeight,
    keeps: true,
    draw: (x, y) => blockTitle(kit, title, x, y, width),
  };
}

export function gapPiece(height: PaperMm): Piece {
  return { height, gap: true, draw: () => [] };
}

/** A text line by line, so that it can go on in the next column; no line of it stands alone. */
export function textPieces(
  kit: Kit,
  text: string,
  width: PaperMm,
  look: Pick<TextLook, 'face' | 'source'> = {},
): Piece[] {
  const lines = wrapped(kit, text, width, look);
  const alone = (at: number) => at === 0 || at === lines.length - 2;
  return lines.map((one, at) => ({
    height: pitch,
    keeps: at < lines.length - 1 && alone(at),
    draw: (x, y) => lettered(kit, [one], x, y, look),
  }));
}

export interface Cell {
  readonly width: PaperMm;
  readonly text: string;
  readonly anchor?: 'start' | 'end';
  readonly bold?: boolean;
  readonly source?: RecordPath | undefined;
}

/** Lines of a cell; what people wrote without end is cut. */
const mostLines = 8;

function linesOf(kit: Kit, { text, width, bold }: Cell): string[] {
  const look = { face: bold ? 'bold' : 'regular' } as const;
  const lines = wrapped(kit, text, width - cellGap, look);
  if (lines.length <= mostLines) return lines;
  const last = fitted(kit, `${lines[mostLines - 1]}…`, width - cellGap, look);
  return [...lines.slice(0, mostLines - 1), last.endsWith('…') ? last : `${last}…`];
}

const rowPad: PaperMm = 0.5;

/** A row of a table, as high as its highest cell, with a hairline under it. */
export function rowPiece(
  kit: Kit,
  cells: readonly Cell[],
  extra: { source?: RecordPath | undefined; head?: Piece; rule?: 'hair' | 'thin' | 'none' } = {},
): Piece {
  const lined = cells.map((cell) => ({ cell, lines: linesOf(kit, cell) }));
  const most = Math.max(1, ...lined.map(({ lines }) => lines.length));
  const height = most * pitch + rowPad;
  const width = cells.reduce((sum, cell) => sum + cell.width, 0);
  const { source, head, rule = 'hair' } = extra;
  return {
    height,
    ...(head && { head }),
    draw: (x, y) => {
      let left = x;
      const words = lined.flatMap(({ cell, lines }) => {
        const { anchor = 'start', bold } = cell;
        const at = anchor === 'start' ? left : left + cell.width - cellGap;
        left += cell.width;
        const look = {
          anchor,
          face: bold ? 'bold' : 'regular',
          source: cell.source ?? source,
        } as const;
        return lines.flatMap((text, down) =>
          letter(kit, text, at, y + down * pitch + baseline('small'), look),
        );
      });
      const foot = y + height - 0.1;
      const rules = rule === 'none' ? [] : [line([x, foot], [x + width, foot], solid(rule))];
      return [group('row', [...words, ...rules], { source })];
    },
  };
}
