import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { StringModel, WellModel } from '../../../model/wellModel.ts';
import { depthFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import { letter, widthOf, type TextLook } from '../../letters.ts';
import { solid } from '../../pens.ts';
import { group, line, rectangle } from '../../shapes.ts';
import { bodyWidth, type SheetKit } from './sheetKit.ts';
import { fittingFigure } from './table.ts';

export const totalsRow: PaperMm = 10.5;

interface TotalCell {
  readonly label: string;
  /** Absent where it is to be written by hand. */
  readonly figure?: string;
  readonly source?: RecordPath;
}

/** The cells of one string; the first, which tells of the hole, stands but once. */
function cellsOf(
  kit: SheetKit,
  string: StringModel,
  { bore, strings }: WellModel,
): (TotalCell | undefined)[] {
  const { totals } = kit.own;
  const openM = bore.foundM ?? bore.depthM;
  const hole = openM === undefined ? '–' : depthFigure(kit, openM);
  const number = strings.length > 1 ? `${string.index + 1}. ` : '';
  return [
    string === strings[0] ? { label: totals.hole, figure: hole, source: 'bore' } : undefined,
    {
      label: number + totals.string,
      figure: depthFigure(kit, string.tallyM),
      source: string.path,
    },
    { label: totals.foot, figure: depthFigure(kit, string.bottomM), source: string.path },
    {
      label: string.stickUpM >= 0 ? totals.above : totals.under,
      figure: depthFigure(kit, Math.abs(string.stickUpM)),
      source: string.path,
    },
    { label: string.stickUpM >= 0 ? totals.measured : kit.own.pipes.measured },
  ];
}

function labelLook(kit: SheetKit, text: string, room: PaperMm): TextLook {
  const normal = widthOf(kit, text, { lettering: 'normal' }) <= room;
  return { lettering: normal ? 'normal' : 'small', widest: room };
}

/** Sums to check each string by, in a framed row; the last cell is to be written in. */
export function drawTotals(kit: SheetKit, model: WellModel, x: PaperMm, y: PaperMm): Item {
  const rows = model.strings.flatMap((string, at) => {
    const cells = cellsOf(kit, string, model);
    const each = bodyWidth / cells.length;
    const top = y + at * totalsRow;
    return cells.flatMap((cell, column) => {
      if (!cell) return [];
      const { label, figure, source } = cell;
      const left = x + column * each;
      const box = { x: left, y: top, width: each, height: totalsRow };
      const room = each - 1.6;
      const look = { ...fittingFigure(kit, figure ?? '', room, true), source };
      return [
        rectangle(box, { stroke: solid(figure === undefined ? 'medium' : 'narrow'), source }),
        ...letter(kit, label, left + 0.8, top + 3.4, labelLook(kit, label, room)),
        ...(figure === undefined
          ? [line([left + 1, top + 9.3], [left + each - 1, top + 9.3], solid('thin'))]
          : letter(kit, figure, left + 0.8, top + 9.2, look)),
      ];
    });
  });
  return group('totals', rows);
}
