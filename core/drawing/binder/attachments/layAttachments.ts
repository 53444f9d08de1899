import type { PaperMm } from '../../../base/units.ts';
import type { Photo } from '../../../record/photos.ts';
import { dayFigure, significantFigure } from '../../figures.ts';
import type { Box, Item, Page } from '../../items.ts';
import { flowedParts } from '../../parts/flow/flow.ts';
import type { Piece } from '../../parts/flow/part.ts';
import { gapPiece, rowPiece, textPieces, type Cell } from '../../parts/flow/pieces.ts';
import { captionLines, drawPhoto, mostLines, type ShownPhoto } from '../../parts/photos.ts';
import type { BinderKit } from '../binder.ts';
import type { BinderWell } from '../binderWell.ts';
import { columnsOf } from '../columnsOf.ts';
import { hashShown } from '../hashShown.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from '../page.ts';
import { sayNumber } from '../say.ts';
import { sumOf } from '../statistics.ts';
import { unknown } from '../tables/figures.ts';
import type { Attachments, ListedFile } from './attachments.ts';

type NamedWell = Pick<BinderWell, 'number' | 'name'>;

const gap: PaperMm = 6;

/** Two cells of a page: one over the other where it stands upright, else side by side. */
function cellsOf(box: Box): readonly [Box, Box] {
  if (box.width > box.height) return columnsOf(box, 2, gap) as [Box, Box];
  const height = (box.height - gap) / 2;
  return [
    { ...box, height },
    { ...box, y: box.y + height + gap, height },
  ];
}

function drawAttached(kit: BinderKit, shown: ShownPhoto, cell: Box): Item {
  const lines = captionLines(kit, shown, cell.width, mostLines(cell.height));
  return drawPhoto(kit, shown, cell, lines.length);
}

const shares = [40, 52, 20, 18, 18, 30, 24] as const;

function sizeShown(kit: BinderKit, bytes: number | undefined): string {
  if (bytes === undefined) return unknown;
  if (bytes < 1e6) return `${significantFigure(kit, bytes / 1e3)} kB`;
  return `${significantFigure(kit, bytes / 1e6)} MB`;
}

const kindShown = ({ mediaType }: Photo) => mediaType?.split('/')[1]?.toUpperCase() ?? unknown;

/** Why a file is only listed. */
function whyListed({ own }: BinderKit, { photo, held }: ListedFile): string {
  const { states, document, leftOut } = own.attachments;
  if (held !== 'held') return states[held];
  return photo.mediaType === 'application/pdf' ? document : leftOut;
}

function filesTable(kit: BinderKit, files: readonly ListedFile[], width: PaperMm): Piece[] {
  if (files.length === 0) return [];
  const { heads, filesSay } = kit.own.attachments;
  const whole = sumOf(shares);
  const row = (texts: readonly string[], bold = false): Cell[] =>
    texts.map((text, at) => ({ width: (shares[at]! / whole) * width, text, bold }));
  const { file, shows, kind, size, day, why, hash } = heads;
  const head = rowPiece(kit, row([file, shows, kind, size, day, why, hash], true), {
    rule: 'thin',
  });
  const rows = files.map((one): Piece => {
    const { photo } = one;
    const cells = row([
      photo.file ?? unknown,
      photo.caption ?? unknown,
      kindShown(photo),
      sizeShown(kit, photo.bytes),
      photo.takenOn === undefined ? unknown : dayFigure(photo.takenOn),
      whyListed(kit, one),
      photo.hash === undefined ? unknown : hashShown(photo.hash),
    ]);
    return { ...rowPiece(kit, cells), head };
  });
  return [{ ...head, keeps: true }, ...rows, gapPiece(2.4), ...textPieces(kit, filesSay, width)];
}

/** Lists over pages; the first are for the free room of a page before, where there is any. */
function listed(pieces: readonly Piece[], box: Box, free: Box | undefined): Item[][] {
  const between = { height: 0, draw: () => [] };
  const parts = [{ name: 'files', pieces, fills: true }];
  const pages = flowedParts([parts], { columns: [box], free, between });
  return pages.map((page) => page.parts.flatMap(({ items }) => items));
}

/**
 * The attachments of a well: pictures two to a page, then a list of other files, which begins under
 * or beside the last picture where that has a page for itself. No page of nothing.
 */
export function layAttachments(
  kit: BinderKit,
  well: NamedWell,
  { pictures, files }: Attachments,
): Page[] {
  const { title } = kit.own.attachments;
  const named = [sayNumber(kit, well), well.name].filter((text) => text !== '').join(' – ');
  const body = bodyOf(kit);
  const box = under(body, partTitleHeight);
  const cells = cellsOf(box);
  const shown: Item[][] = [];
  for (let at = 0; at < pictures.length; at += cells.length) {
    const both = pictures.slice(at, at + cells.length);
    shown.push(both.map((one, place) => drawAttached(kit, one, cells[place]!)));
  }
  const free = pictures.length % cells.length === 1 ? cells[1] : undefined;
  const lists = listed(filesTable(kit, files, (free ?? box).width), box, free);
  if (free) shown.at(-1)!.push(...(lists.shift() ?? []));
  return [...shown, ...lists].map((items) =>
    binderPage(kit, { title: named }, title, [partTitle(kit, title, body), ...items]),
  );
}
