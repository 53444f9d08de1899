import type { PaperMm } from '../../base/units.ts';
import { wellStates } from '../../record/identity.ts';
import { baseline, letter } from '../letters.ts';
import { flowed } from '../parts/flow/flow.ts';
import type { Piece } from '../parts/flow/part.ts';
import { gapPiece } from '../parts/flow/pieces.ts';
import { lineHeight } from '../pens.ts';
import type { BinderContent, BinderKit, LaidPart } from './binder.ts';
import { columnsOf } from './columnsOf.ts';
import { drawWellSign, signHalf } from './map/wellSign.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from './page.ts';
import { chapterPieces, headingPiece, prosePieces } from './prose.ts';
import { sayState } from './say.ts';

const signRow: PaperMm = 5;

/** Each sign of the map with the state that it stands for. */
export function signPieces(kit: BinderKit): Piece[] {
  return [...wellStates, '' as const].map((state, at) => ({
    height: signRow,
    keeps: at < wellStates.length,
    draw: (x, y) => [
      drawWellSign(state, [x + signHalf + 0.5, y + lineHeight('normal') / 2]),
      ...letter(kit, sayState(kit, state), x + 6, y + baseline('normal'), { lettering: 'normal' }),
    ],
  }));
}

function piecesOf(kit: BinderKit, { papers }: BinderContent, width: PaperMm): Piece[] {
  const { reading } = kit.own;
  const chapter = ({ title, says }: { title: string; says: readonly string[] }) => [
    ...chapterPieces(kit, title, says, width),
    gapPiece(3),
  ];
  return [
    ...chapter(reading.finding),
    ...chapter({
      title: reading.papers.title,
      says: papers.map((paper) => reading.papers.each[paper]),
    }),
    ...chapter(reading.depths),
    ...chapter(reading.units),
    headingPiece(kit, reading.signs.title, width),
    ...signPieces(kit),
    ...reading.signs.says.flatMap((one) => prosePieces(kit, one, width)),
    gapPiece(3),
    ...chapter(reading.yields),
    ...chapter(reading.water),
    ...chapter(reading.cautions),
  ];
}

/** How the binder is read: signs, units, depths, papers, cautions. */
export function layReading(kit: BinderKit, content: BinderContent): LaidPart {
  const title = kit.own.parts.reading;
  const body = bodyOf(kit);
  const columns = columnsOf(under(body, partTitleHeight), 2, 8);
  const pages = flowed(piecesOf(kit, content, columns[0]!.width), columns);
  return {
    pages: pages.map((items) =>
      binderPage(kit, content, title, [partTitle(kit, title, body), ...items]),
    ),
    marks: [],
  };
}
