import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Box, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { solid, type Lettering } from '../pens.ts';
import { group, rectangle } from '../shapes.ts';

export const titleBlockHeight: PaperMm = 34;

/** What the title block says; fields follow ISO 7200 (see docs/sheet.md for the list). */
export interface TitleFields {
  readonly client: string;
  readonly programme: string;
  readonly contractor: string;
  readonly supervisor: string;
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
}

interface Cell {
  readonly box: Box;
  readonly label: string;
  readonly value: string;
  readonly lettering?: Lettering;
  readonly bold?: boolean;
  readonly source?: RecordPath;
}

function drawCell(kit: Kit, cell: Cell): Item[] {
  const { box, label, value, lettering = 'normal', bold, source } = cell;
  const widest = box.width - 2;
  return [
    rectangle(box, { stroke: solid('thin') }),
    ...letter(kit, label, box.x + 1, box.y + 2.5, { widest }),
    ...letter(kit, value, box.x + 1, box.y + box.height - 1.3, {
      lettering,
      face: bold ? 'bold' : 'regular',
      widest,
      source,
    }),
  ];
}

/** Cells of one row: label, value, width, and the field that it shows. */
type RowCell = readonly [string, string, PaperMm, RecordPath?];

function row(cells: readonly RowCell[], x: PaperMm, y: PaperMm, height: PaperMm): Cell[] {
  let left = x;
  return cells.map(([label, value, width, source]) => {
    const box = { x: left, y, width, height };
    left += width;
    return { box, label, value, ...(source !== undefined && { source }) };
  });
}

function cellsOf(kit: Kit, fields: TitleFields, x: PaperMm, y: PaperMm): Cell[] {
  const { title } = kit.words;
  const rowHeight = 6.8;
  const at = (index: number) => y + index * rowHeight;
  const left: Cell[] = [
    ...row([[title.client, fields.client, 62, 'identity.client']], x, at(0), rowHeight),
    ...row([[title.programme, fields.programme, 62, 'identity.programme']], x, at(1), rowHeight),
    ...row([[title.contractor, fields.contractor, 62, 'identity.contractor']], x, at(2), rowHeight),
    ...row([[title.supervisor, fields.supervisor, 62, 'identity.supervisor']], x, at(3), rowHeight),
    ...row(
      [
        [title.datum, title.datumText, 38],
        [title.coordinates, title.coordinatesText, 24],
      ],
      x,
      at(4),
      rowHeight,
    ),
  ];
  const middle = x + 62;
  const centre: Cell[] = [
    {
      box: { x: middle, y, width: 72, height: 2 * rowHeight },
      label: title.titleField,
      value: fields.title,
      lettering: 'title',
      bold: true,
      source: 'site.village',
    },
    ...row([[title.place, fields.place, 72, 'site.spot']], middle, at(2), rowHeight),
    ...row([[title.district, fields.district, 72, 'site.district']], middle, at(3), rowHeight),
    ...row(
      [
        [title.documentType, fields.documentType, 56],
        [title.language, kit.words.language, 16],
      ],
      middle,
      at(4),
      rowHeight,
    ),
  ];
  const rightX = middle + 72;
  const right: Cell[] = [
    {
      box: { x: rightX, y, width: 46, height: 2 * rowHeight },
      label: title.number,
      value: fields.number,
      lettering: 'title',
      bold: true,
      source: 'identity.number',
    },
    ...row([[title.status, fields.status, 46]], rightX, at(2), rowHeight),
    ...row(
      [
        [title.depthScale, fields.depthScale, 23],
        [title.widthScale, fields.widthScale, 23],
      ],
      rightX,
      at(3),
      rowHeight,
    ),
    ...row(
      [
        [title.revision, fields.revision, 14],
        [title.date, fields.date, 20],
        [title.sheet, fields.sheet, 12],
      ],
      rightX,
      at(4),
      rowHeight,
    ),
  ];
  return [...left, ...centre, ...right];
}

/** The title block, 180 mm wide, by its upper left corner. */
export function drawTitleBlock(kit: Kit, fields: TitleFields, x: PaperMm, y: PaperMm): Item {
  const cells = cellsOf(kit, fields, x, y).flatMap((cell) => drawCell(kit, cell));
  const frame = { x, y, width: 180, height: titleBlockHeight };
  return group('titleBlock', [...cells, rectangle(frame, { stroke: solid('wide') })]);
}
