import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Box, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter, widthOf, type TextLook } from '../letters.ts';
import { solid, type Lettering } from '../pens.ts';
import { group, rectangle } from '../shapes.ts';
import { drawWellCode, wellCodeHeight, wellCodeWidth } from './code/wellCode.ts';

export const titleBlockHeight: PaperMm = wellCodeHeight;

/** What the title block says; fields follow ISO 7200. */
export interface TitleFields {
  readonly client: string;
  readonly programme: string;
  readonly contract: string;
  readonly contractor: string;
  readonly supervisor: string;
  readonly approval: string;
  readonly title: string;
  readonly place: string;
  readonly district: string;
  readonly number: string;
  readonly documentType: string;
  readonly status: string;
  readonly revision: string;
  readonly date: string;
  readonly sheet: string;
  readonly depthScale: string;
  readonly widthScale: string;
  /** Text of the code at the block's left side; a block without it has wider cells. */
  readonly code?: string;
}

interface Cell {
  readonly box: Box;
  readonly label: string;
  readonly value: string;
  readonly lettering?: Lettering;
  readonly bold?: boolean;
  readonly source?: RecordPath;
}

/** Letterings from the largest down. */
const smaller: readonly Lettering[] = ['title', 'large', 'normal', 'small'];

/** The value in the largest lettering, from the wished one down, in which it fits the cell. */
function fittingLook(kit: Kit, cell: Cell, widest: PaperMm): TextLook {
  const { value, lettering = 'normal', bold, source } = cell;
  const face = bold ? 'bold' : 'regular';
  const sizes = smaller.slice(smaller.indexOf(lettering));
  const fits = sizes.find((size) => widthOf(kit, value, { lettering: size, face }) <= widest);
  return { lettering: fits ?? 'small', face, widest, source };
}

/** A cell with its label above and its value on the foot, in the manner of ISO 7200. */
function drawCell(kit: Kit, cell: Cell): Item[] {
  const { box, label, value, lettering } = cell;
  const widest = box.width - 2;
  const look = fittingLook(kit, cell, widest);
  return [
    rectangle(box, { stroke: solid('thin') }),
    ...letter(kit, label, box.x + 1, box.y + 2.75, { widest }),
    ...letter(kit, value, box.x + 1, box.y + box.height - (lettering === 'title' ? 2.4 : 1), look),
  ];
}

/** Cells of one row: label, value, width, and the field that it shows. */
type RowCell = readonly [string, string, PaperMm, RecordPath?];

/** Cells of one row side by side, from the left. */
function row(cells: readonly RowCell[], x: PaperMm, y: PaperMm, height: PaperMm): Cell[] {
  let left = x;
  return cells.map(([label, value, width, source]) => {
    const box = { x: left, y, width, height };
    left += width;
    return { box, label, value, ...(source !== undefined && { source }) };
  });
}

/** Five rows make the block's 33.5 mm; the parts its 180 mm, as ISO 7200 has it. */
const rowHeight: PaperMm = 6.7;

/** Widths of the block's parts. */
interface Widths {
  readonly code: PaperMm;
  readonly left: PaperMm;
  readonly centre: PaperMm;
  readonly right: PaperMm;
}

const widthsWith: Widths = { code: wellCodeWidth, left: 56, centre: 58, right: 44 };
const widthsWithout: Widths = { code: 0, left: 68, centre: 68, right: 44 };

/** A cell two rows high for the name or number that the eye looks for. */
function tall([label, value, width, source]: RowCell, x: PaperMm, y: PaperMm): Cell {
  const box = { x, y, width, height: 2 * rowHeight };
  return { box, label, value, lettering: 'title', bold: true, ...(source && { source }) };
}

/** Rows one under the other. */
function rows(lines: readonly (readonly RowCell[])[], x: PaperMm, y: PaperMm): Cell[] {
  return lines.flatMap((cells, at) => row(cells, x, y + at * rowHeight, rowHeight));
}

/** Who stands behind the well, and what its numbers are measured in. */
function leftCells({ words: { title } }: Kit, fields: TitleFields, width: PaperMm): RowCell[][] {
  const half = width / 2 + (fields.code === undefined ? 2 : 4);
  const contract: PaperMm = 23;
  return [
    [[title.client, fields.client, width, 'identity.client']],
    [[title.programme, fields.programme, width, 'identity.programme']],
    [
      [title.contractor, fields.contractor, width - contract, 'identity.contractor'],
      [title.contract, fields.contract, contract, 'identity.contract'],
    ],
    [
      [title.supervisor, fields.supervisor, half, 'identity.supervisor'],
      [title.approval, fields.approval, width - half],
    ],
    [
      [title.datum, title.datumText, half],
      [title.coordinates, title.coordinatesText, width - half],
    ],
  ];
}

/** Where the well is and what kind of paper this is, under the well's name. */
function centreCells({ words }: Kit, fields: TitleFields, width: PaperMm): RowCell[][] {
  const { title, language } = words;
  const narrow: PaperMm = fields.code === undefined ? 14 : 13.4;
  return [
    [[title.place, fields.place, width, 'site.spot']],
    [[title.district, fields.district, width, 'site.district']],
    [
      [title.documentType, fields.documentType, width - narrow],
      [title.language, language, narrow],
    ],
  ];
}

/** What a reader checks before trusting a print: state, scales, revision, sheet. */
function rightCells({ words: { title } }: Kit, fields: TitleFields, width: PaperMm): RowCell[][] {
  return [
    [[title.status, fields.status, width, 'identity.state']],
    [
      [title.depthScale, fields.depthScale, width / 2],
      [title.widthScale, fields.widthScale, width / 2],
    ],
    [
      [title.revision, fields.revision, 12],
      [title.date, fields.date, width - 25.6],
      [title.sheet, fields.sheet, 13.6],
    ],
  ];
}

/** Three parts side by side; name and number are tall and stand at the top of theirs. */
function cellsOf(kit: Kit, fields: TitleFields, x: PaperMm, y: PaperMm): Cell[] {
  const { title } = kit.words;
  const widths = fields.code === undefined ? widthsWithout : widthsWith;
  const left = x + widths.code;
  const centre = left + widths.left;
  const right = centre + widths.centre;
  const under = y + 2 * rowHeight;
  return [
    ...rows(leftCells(kit, fields, widths.left), left, y),
    tall([title.titleField, fields.title, widths.centre, 'identity.name'], centre, y),
    ...rows(centreCells(kit, fields, widths.centre), centre, under),
    tall([title.number, fields.number, widths.right, 'identity.number'], right, y),
    ...rows(rightCells(kit, fields, widths.right), right, under),
  ];
}

/** The title block, 180 mm wide, by its upper left corner. */
export function drawTitleBlock(kit: Kit, fields: TitleFields, x: PaperMm, y: PaperMm): Item {
  const cells = cellsOf(kit, fields, x, y).flatMap((cell) => drawCell(kit, cell));
  const frame = { x, y, width: 180, height: titleBlockHeight };
  const code = fields.code === undefined ? [] : [drawWellCode(kit, fields.code, x, y)];
  return group('titleBlock', [...code, ...cells, rectangle(frame, { stroke: solid('wide') })]);
}
