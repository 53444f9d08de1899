import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Box, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter, widthOf, wrapped, type TextLook } from '../letters.ts';
import { lineHeight, solid, type Lettering } from '../pens.ts';
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
/** Letterings in which a value may go on over several lines. */
const inLines: readonly Lettering[] = ['normal', 'small'];

const side: PaperMm = 1;
/** Baseline of a label under its cell's upper edge, and of the last line over the lower one. */
const labelBase: PaperMm = 2.35;
const lastBase: PaperMm = 0.9;
/** Between a label and a value that begins behind it. */
const behindLabel: PaperMm = 1.5;

/** A value as it is written: its lines from the top, the first at a distance from the left. */
interface Written {
  readonly lines: readonly string[];
  readonly indent: PaperMm;
  readonly look: TextLook & { readonly lettering: Lettering };
}

/** Lines of the value, the first under the label or, where only so they have room, behind it. */
function writtenIn(kit: Kit, { box, label, value }: Cell, look: Written['look']): Written {
  const widest = box.width - 2 * side;
  const free = box.height - labelBase - lastBase;
  const under = Math.floor(free / lineHeight(look.lettering) + 0.01);
  const behind = under < 2;
  const indent = behind ? Math.min(widest, widthOf(kit, label) + behindLabel) : 0;
  const lines = wrapped(kit, value, widest, look, widest - indent);
  const most = behind ? under + 1 : under;
  if (lines.length <= most) return { lines, indent, look };
  return { lines: [...lines.slice(0, most - 1), lines.slice(most - 1).join(' ')], indent, look };
}

/**
 * The value on one line in the largest lettering, from the wished one down, in which it fits the
 * cell; else over as many lines as the cell has room for, cut only where the smallest lettering
 * does not fit these.
 */
function written(kit: Kit, cell: Cell): Written {
  const { value, lettering = 'normal', bold, source, box } = cell;
  const widest = box.width - 2 * side;
  const looks = smaller.slice(smaller.indexOf(lettering)).map((one) => {
    return { lettering: one, face: bold ? 'bold' : 'regular', source } as const;
  });
  const line = looks.find((look) => widthOf(kit, value, look) <= widest);
  if (line) return { lines: [value], indent: 0, look: line };
  const tried = looks
    .filter((look) => inLines.includes(look.lettering))
    .map((look) => writtenIn(kit, cell, look));
  const whole = tried.find(({ lines, indent, look }) =>
    lines.every((one, at) => widthOf(kit, one, look) <= widest - (at === 0 ? indent : 0)),
  );
  return whole ?? tried.at(-1)!;
}

/**
 * A cell with its label above and its value on the foot, in the manner of ISO 7200; a label that a
 * value begins behind stands on its line.
 */
function drawCell(kit: Kit, cell: Cell): Item[] {
  const { box, label, lettering } = cell;
  const widest = box.width - 2 * side;
  const left = box.x + side;
  const { lines, indent, look } = written(kit, cell);
  const raised = lettering === 'title' && lines.length === 1;
  const foot = box.y + box.height - (raised ? 2.4 : lastBase);
  const baseOf = (at: number) => foot - (lines.length - 1 - at) * lineHeight(look.lettering);
  const labelY = indent > 0 ? baseOf(0) : box.y + labelBase;
  return [
    rectangle(box, { stroke: solid('thin') }),
    ...letter(kit, label, left, labelY, { widest }),
    ...lines.flatMap((text, at) => {
      const inset = at === 0 ? indent : 0;
      const y = baseOf(at);
      return letter(kit, text, left + inset, y, { ...look, widest: widest - inset });
    }),
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

/** Five rows make the block's 33.5 mm; the two parts its 180 mm, as ISO 7200 has it. */
const rowHeight: PaperMm = 6.7;

const blockWidth: PaperMm = 180;
/** Width of the right part beside the code; names and places stand at its left. */
const rightWidth: PaperMm = 90;
/** What it has more on a page without the code, for what a page of several parts is called. */
const moreWithoutCode: PaperMm = 12;
const numberWidth: PaperMm = 36;

/** A cell two rows high for the name or number that the eye looks for. */
function tall([label, value, width, source]: RowCell, x: PaperMm, y: PaperMm): Cell {
  const box = { x, y, width, height: 2 * rowHeight };
  return { box, label, value, lettering: 'title', bold: true, ...(source && { source }) };
}

/** Rows one under the other. */
function rows(lines: readonly (readonly RowCell[])[], x: PaperMm, y: PaperMm): Cell[] {
  return lines.flatMap((cells, at) => row(cells, x, y + at * rowHeight, rowHeight));
}

/** Who stands behind the well, and where it is: the longest of what is written. */
function leftCells({ words: { title } }: Kit, fields: TitleFields, width: PaperMm): RowCell[][] {
  const coordinates: PaperMm = 16;
  return [
    [[title.client, fields.client, width, 'identity.client']],
    [[title.programme, fields.programme, width, 'identity.programme']],
    [[title.contractor, fields.contractor, width, 'identity.contractor']],
    [[title.place, fields.place, width, 'site.spot']],
    [
      [title.district, fields.district, width - coordinates, 'site.district'],
      [title.coordinates, title.coordinatesText, coordinates],
    ],
  ];
}

/** What a reader checks before trusting a print: people, state, scales, revision, sheet. */
function rightCells({ words }: Kit, fields: TitleFields, more: PaperMm): RowCell[][] {
  const { title, language } = words;
  return [
    [
      [title.supervisor, fields.supervisor, 35 + more, 'identity.supervisor'],
      [title.approval, fields.approval, 30],
      [title.contract, fields.contract, 25, 'identity.contract'],
    ],
    [
      [title.documentType, fields.documentType, 38 + more],
      [title.status, fields.status, 30, 'identity.state'],
      [title.datum, title.datumText, 22],
    ],
    [
      [title.language, language, 13.2],
      [title.depthScale, fields.depthScale, 19 + more],
      [title.widthScale, fields.widthScale, 14],
      [title.revision, fields.revision, 11.8],
      [title.date, fields.date, 19.5],
      [title.sheet, fields.sheet, 12.5],
    ],
  ];
}

/** Two parts side by side; name and number are tall and stand at the top of the right one. */
function cellsOf(kit: Kit, fields: TitleFields, x: PaperMm, y: PaperMm): Cell[] {
  const { title } = kit.words;
  const [code, more] = fields.code === undefined ? [0, moreWithoutCode] : [wellCodeWidth, 0];
  const left = x + code;
  const number = x + blockWidth - numberWidth;
  const right = x + blockWidth - rightWidth - more;
  return [
    ...rows(leftCells(kit, fields, right - left), left, y),
    tall([title.titleField, fields.title, number - right, 'identity.name'], right, y),
    tall([title.number, fields.number, numberWidth, 'identity.number'], number, y),
    ...rows(rightCells(kit, fields, more), right, y + 2 * rowHeight),
  ];
}

/** The title block, 180 mm wide, by its upper left corner. */
export function drawTitleBlock(kit: Kit, fields: TitleFields, x: PaperMm, y: PaperMm): Item {
  const cells = cellsOf(kit, fields, x, y).flatMap((cell) => drawCell(kit, cell));
  const frame = { x, y, width: blockWidth, height: titleBlockHeight };
  const code = fields.code === undefined ? [] : [drawWellCode(kit, fields.code, x, y)];
  return group('titleBlock', [...code, ...cells, rectangle(frame, { stroke: solid('wide') })]);
}
