import type { PaperMm } from '../../base/units.ts';
import type { Box, Item } from '../items.ts';
import { baseline, letter, lettered, widthOf, wrapped } from '../letters.ts';
import { flowed } from '../parts/flow/flow.ts';
import type { Piece } from '../parts/flow/part.ts';
import { gapPiece } from '../parts/flow/pieces.ts';
import { black, lineHeight, solid } from '../pens.ts';
import { group, line } from '../shapes.ts';
import type { BinderContent, BinderKit, LaidPart, Places } from './binder.ts';
import { columnsOf } from './columnsOf.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from './page.ts';

/** A line that leads to a page. */
export interface PageLine {
  readonly says: string;
  /** Behind it, lighter. */
  readonly more?: string;
  readonly page: number;
  readonly indent?: PaperMm;
  readonly bold?: boolean;
  /** The next line stands under it in the same column. */
  readonly keeps?: boolean;
  /** It stands again over a column that its followers go on in. */
  readonly again?: boolean;
}

/** A heading over lines, or a line. */
export type Line = { readonly head: string; readonly more?: string } | PageLine;

const columnGap: PaperMm = 7;
/** Room for the widest page that places may say, whatever they do say. */
const pageWidth: PaperMm = 18;
const lettering = 'normal' as const;
const pitch = lineHeight(lettering);

/** A row of dots up to the number. */
function leader(from: PaperMm, to: PaperMm, y: PaperMm): Item[] {
  if (to - from < 3) return [];
  const stroke = { ink: black, width: 0.25, dash: [0.25, 1.35] } as const;
  // Counted from the right, so that the dots of all lines stand under each other.
  return [line([to, y], [from, y], stroke)];
}

function linePiece(kit: BinderKit, one: PageLine, width: PaperMm, places: Places): Piece {
  const { says, more = '', page, indent = 0, bold = false } = one;
  const face = bold ? 'bold' : 'regular';
  const look = { lettering, face } as const;
  const lines = wrapped(kit, says, width - indent - pageWidth, look);
  const last = lines.at(-1) ?? '';
  const used = widthOf(kit, last, look);
  const behind = more === '' ? '' : `, ${more}`;
  const besides = used + widthOf(kit, behind, { lettering }) <= width - indent - pageWidth;
  const text = besides ? [...lines] : [...lines, more];
  const height = Math.max(1, text.length) * pitch + 0.7;
  return {
    height,
    keeps: one.keeps ?? false,
    draw: (x, y) => {
      const left = x + indent;
      const base = y + (Math.max(1, text.length) - 1) * pitch + baseline(lettering);
      const number = places.says(page);
      const end = besides
        ? left + used + widthOf(kit, behind, { lettering })
        : left + widthOf(kit, more, { lettering });
      const numberLeft = x + width - widthOf(kit, number, look);
      return [
        group('line', [
          ...lettered(kit, lines, left, y, look),
          ...(besides
            ? letter(kit, behind, left + used, base, { lettering })
            : letter(kit, more, left, base, { lettering, widest: width - indent - pageWidth })),
          ...leader(Math.min(end, x + width - pageWidth) + 1.2, numberLeft - 1.2, base - 0.1),
          ...letter(kit, number, x + width, base, { ...look, anchor: 'end' }),
        ]),
        { kind: 'link', box: { x, y, width, height: height - 0.7 }, to: { page } },
      ];
    },
  };
}

function headPieces(kit: BinderKit, head: string, more: string, width: PaperMm): Piece[] {
  const look = { lettering, face: 'bold' } as const;
  const lines = wrapped(kit, more === '' ? head : `${head}, ${more}`, width, look);
  const height = lines.length * pitch + 1.6;
  return [
    gapPiece(3),
    {
      height,
      keeps: true,
      draw: (x, y) => [
        ...lettered(kit, lines, x, y, look),
        line([x, y + height - 1], [x + width, y + height - 1], solid('thin')),
      ],
    },
  ];
}

function piecesOf(kit: BinderKit, lines: readonly Line[], width: PaperMm, places: Places): Piece[] {
  let head: Piece | undefined;
  return lines.flatMap((one): Piece[] => {
    if ('head' in one) {
      const [gap, title] = headPieces(kit, one.head, one.more ?? '', width);
      head = title;
      return [gap!, title!];
    }
    const piece = linePiece(kit, one, width, places);
    if (one.again) {
      head = piece;
      return [gapPiece(1), piece];
    }
    return [head && one.indent !== undefined ? { ...piece, head } : piece];
  });
}

/** Lines with leaders and page numbers in two columns of a box; the items of each page. */
export function linesInColumns(
  kit: BinderKit,
  lines: readonly Line[],
  places: Places,
  box: Box,
): Item[][] {
  const columns = columnsOf(box, 2, columnGap);
  return flowed(piecesOf(kit, lines, columns[0]!.width, places), columns);
}

/** Such lines under the title of their part. */
export function linedPages(
  kit: BinderKit,
  content: BinderContent,
  title: string,
  places: Places,
  lines: readonly Line[],
): LaidPart {
  const body = bodyOf(kit);
  const pages = linesInColumns(kit, lines, places, under(body, partTitleHeight));
  return {
    pages: pages.map((items) =>
      binderPage(kit, content, title, [partTitle(kit, title, body), ...items]),
    ),
    marks: [],
  };
}
