import type { PaperMm } from '../../../base/units.ts';
import type { Piece } from '../../parts/flow/part.ts';
import { gapPiece, rowPiece, type Cell } from '../../parts/flow/pieces.ts';
import type { BinderContent, BinderKit, Places } from '../binder.ts';
import type { BinderWell } from '../binderWell.ts';
import { districtsOf } from '../order.ts';
import { counted, sayDistrict } from '../say.ts';
import { linkedRow } from './linkedRow.ts';

/** A column of a table of wells. Widths are shares of what the page gives. */
export interface WellColumn {
  readonly title: string;
  readonly share: number;
  readonly anchor?: 'start' | 'end';
  readonly says: (well: BinderWell, places: Places) => string;
  /** What stands under the wells of a district, and under all; empty where absent. */
  readonly sums?: (wells: readonly BinderWell[]) => string;
}

type Cells = (says: (column: WellColumn) => string, bold?: boolean) => Cell[];

function cellsOf(columns: readonly WellColumn[], width: PaperMm): Cells {
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  return (says, bold = false) =>
    columns.map((column) => ({
      width: (column.share / whole) * width,
      text: says(column),
      anchor: column.anchor ?? 'start',
      bold,
    }));
}

/** The first column says whose medians they are; the second goes with it where it is short. */
function sumRow(
  kit: BinderKit,
  title: string,
  wells: readonly BinderWell[],
  columns: readonly WellColumn[],
  width: PaperMm,
): Piece {
  const cells = cellsOf(columns, width)((column) => column.sums?.(wells) ?? '', true);
  const [first, second, ...rest] = cells;
  const wide = { ...first!, text: title, width: first!.width + second!.width };
  return rowPiece(kit, [wide, ...rest], { rule: 'thin' });
}

/**
 * Wells district by district, with what they come to under each district and under all. Each row
 * leads to the papers of its well.
 */
export function wellTable(
  kit: BinderKit,
  { wells }: BinderContent,
  places: Places,
  columns: readonly WellColumn[],
  width: PaperMm,
): Piece[] {
  const { own } = kit;
  const cells = cellsOf(columns, width);
  const head = rowPiece(
    kit,
    cells(({ title }) => title, true),
    { rule: 'thin' },
  );
  const districts = districtsOf(wells);
  const bodies = districts.flatMap((district): Piece[] => {
    const name = `${sayDistrict(kit, district.name)}, ${counted(own.counts.wells, district.wells.length)}`;
    return [
      gapPiece(2.4),
      {
        ...rowPiece(kit, [{ width, text: name, bold: true }], { rule: 'thin' }),
        head,
        keeps: true,
      },
      ...district.wells.map((well) => {
        const row = rowPiece(
          kit,
          cells(({ says }) => says(well, places)),
        );
        return { ...linkedRow(row, width, places.pageOf(well.id)), head };
      }),
      { ...sumRow(kit, own.tables.median, district.wells, columns, width), head },
    ];
  });
  const all = sumRow(
    kit,
    `${own.tables.all}${kit.words.colon} ${own.tables.median}`,
    wells,
    columns,
    width,
  );
  return [
    { ...head, keeps: true },
    ...bodies,
    ...(districts.length > 1 ? [gapPiece(2.4), { ...all, head }] : []),
  ];
}
