import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import { numberedPhotos, type Photo } from '../../record/photos.ts';
import { dayFigure } from '../figures.ts';
import type { Box, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { baseline, fitted, letter, lettered, widthOf, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { group, rectangle } from '../shapes.ts';

/** A picture that is at hand, ready for a painter. */
export interface PhotoImage {
  /** PNG or JPEG as a data URL. */
  readonly data: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

/** Pictures by the hash that records name them by. */
export type PhotoImages = Readonly<Record<string, PhotoImage>>;

/** A photo that papers show, with its picture where that is at hand. */
export interface ShownPhoto {
  readonly photo: Photo;
  readonly path: RecordPath;
  /** From 1. */
  readonly number: number;
  readonly image?: PhotoImage;
}

/** The photos that papers show, in the record's order. */
export function shownPhotos(
  photos: readonly Photo[] | undefined,
  images: PhotoImages,
): ShownPhoto[] {
  return numberedPhotos(photos).flatMap(({ photo, at, number }) => {
    if (number === undefined) return [];
    const image = photo.hash === undefined ? undefined : images[photo.hash];
    return [{ photo, path: `photos[${at}]`, number, ...(image && { image }) }];
  });
}

/** Width over height where nothing tells: most cameras' 4 to 3. */
const usualRatio = 4 / 3;
/** An empty frame holds a sentence, which a very narrow or low one could not. */
const frameRatios = [0.6, 2.2] as const;

/** Width over height; of the picture itself where it is at hand. */
export function ratioOf({ image, photo }: ShownPhoto): number {
  if (image) return image.width / image.height;
  const { width = 0, height = 0 } = photo;
  const written = width > 0 && height > 0 ? width / height : usualRatio;
  return Math.min(frameRatios[1], Math.max(frameRatios[0], written));
}

const pitch = lineHeight('small');
/** Between a picture and the words under it, and under those. */
const gap: PaperMm = 1;
const foot: PaperMm = 2.5;
/** A caption leaves its picture at least this height. */
const leastPicture: PaperMm = 30;

/** The lines of a caption, no more than `most`; what is left out is told in the last line. */
export function captionLines(
  kit: Kit,
  { photo }: ShownPhoto,
  width: PaperMm,
  most: number,
): string[] {
  const lines = wrapped(kit, photo.caption ?? '', width);
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), fitted(kit, `… ${kit.words.photos.cut}`, width)];
}

/** Most lines that a caption may have in a cell of one height. */
export function mostLines(cellHeight: PaperMm): number {
  return Math.floor((cellHeight - leastPicture - gap - foot) / pitch) - 1;
}

/** The largest picture of a ratio in a room. */
export function fittedSize(ratio: number, width: PaperMm, height: PaperMm) {
  const wide = Math.min(width, height * ratio);
  return { width: wide, height: wide / ratio };
}

/** Height that a cell leaves for pictures over captions of so many lines. */
export function pictureHeight(cellHeight: PaperMm, lines: number): PaperMm {
  return cellHeight - gap - (lines + 1) * pitch - foot;
}

/** A frame where a picture should be, with the sentence that says why there is none. */
function drawEmpty(kit: Kit, { photo, path }: ShownPhoto, box: Box): Item[] {
  const { x, y, width, height } = box;
  const says = [kit.words.photos.missing, photo.file].filter(Boolean).join(' – ');
  const most = Math.floor((height - 4) / pitch);
  const lines = wrapped(kit, says, width - 4).slice(0, most);
  return lettered(kit, lines, x + 2, y + 2, { source: path });
}

function drawPicture(kit: Kit, shown: ShownPhoto, box: Box): Item[] {
  const { image, path, photo, number } = shown;
  const says = photo.caption ?? `${kit.words.photos.photo} ${number}`;
  const picture: Item[] = image
    ? [{ kind: 'image', ...box, data: image.data, says, source: path }]
    : drawEmpty(kit, shown, box);
  return [...picture, rectangle(box, { stroke: solid('thin'), source: path })];
}

/** Number and day in one line, the caption under them. */
function drawWords(
  kit: Kit,
  { photo, path, number }: ShownPhoto,
  lines: readonly string[],
  x: PaperMm,
  y: PaperMm,
): Item[] {
  const base = y + baseline('small');
  const look = { source: path };
  const bold = { ...look, face: 'bold' } as const;
  const name = `${kit.words.photos.photo} ${number}`;
  const day = photo.takenOn === undefined ? '' : dayFigure(photo.takenOn);
  return [
    ...letter(kit, name, x, base, bold),
    ...letter(kit, day, x + widthOf(kit, `${name}  `, bold), base, look),
    ...lettered(kit, lines, x, y + pitch, look),
  ];
}

/** A photo with its words in a cell; `lines` of caption are kept for all cells of a row. */
export function drawPhoto(kit: Kit, shown: ShownPhoto, cell: Box, lines: number): Item {
  const room = pictureHeight(cell.height, lines);
  const size = fittedSize(ratioOf(shown), cell.width, room);
  const words = captionLines(kit, shown, cell.width, mostLines(cell.height));
  const under = cell.y + size.height + gap;
  return group(
    'photo',
    [
      ...drawPicture(kit, shown, { x: cell.x, y: cell.y, ...size }),
      ...drawWords(kit, shown, words, cell.x, under),
    ],
    { source: shown.path },
  );
}
