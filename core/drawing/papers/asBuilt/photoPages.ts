import type { PaperMm } from '../../../base/units.ts';
import { blockTitle, blockTitleHeight } from '../../parts/block.ts';
import {
  captionLines,
  drawPhoto,
  fittedSize,
  mostLines,
  pictureHeight,
  ratioOf,
  shownPhotos,
  type ShownPhoto,
} from '../../parts/photos.ts';
import { titleBlockHeight, type TitleFields } from '../../parts/titleBlock.ts';
import type { Box, Item, Page } from '../../items.ts';
import { group } from '../../shapes.ts';
import type { Orientation, Paper, PaperName } from '../../paper.ts';
import { drawTitle } from './foot.ts';
import type { SheetInput } from './sheetInput.ts';
import { drawFrame } from './wellPage.ts';

/** Cells across and down. */
type Grid = readonly [columns: number, rows: number];

interface Grids {
  readonly all: readonly Grid[];
  readonly wide: number;
  readonly tall: number;
}

/** Grids of a page, and the most photos on one where most are wide or most are tall. */
// prettier-ignore
const grids: Readonly<Record<PaperName, Readonly<Record<Orientation, Grids>>>> = {
  A4: {
    portrait: { all: [[1, 1], [1, 2], [2, 2], [2, 3]], wide: 6, tall: 4 },
    landscape: { all: [[1, 1], [2, 1], [2, 2], [3, 2]], wide: 4, tall: 4 },
  },
  A3: {
    portrait: { all: [[1, 1], [1, 2], [2, 2], [2, 3], [2, 4], [3, 4]], wide: 12, tall: 8 },
    landscape: { all: [[1, 1], [2, 1], [3, 1], [3, 2], [4, 2], [4, 3]], wide: 12, tall: 8 },
  },
};

function gridsOf({ name, orientation }: Paper): Grids {
  return grids[name][orientation];
}

const gutter: PaperMm = 4;
const pad: PaperMm = 2;

/** What the title of the page and the title block leave. */
function bodyOf({ frame }: Paper): Box {
  const top = frame.y + pad + blockTitleHeight + 1;
  const foot = frame.y + frame.height - titleBlockHeight - pad;
  return { x: frame.x + pad, y: top, width: frame.width - 2 * pad, height: foot - top };
}

function cellSize(body: Box, [columns, rows]: Grid) {
  return {
    width: (body.width - (columns - 1) * gutter) / columns,
    height: (body.height - (rows - 1) * gutter) / rows,
  };
}

/** Photos of a page in rows from the left. */
function rowsOf(photos: readonly ShownPhoto[], [columns]: Grid): ShownPhoto[][] {
  const count = Math.ceil(photos.length / columns);
  return Array.from({ length: count }, (_, row) =>
    photos.slice(row * columns, (row + 1) * columns),
  );
}

/** Lines that the longest caption of a row takes. */
function linesOf(
  { kit }: SheetInput,
  row: readonly ShownPhoto[],
  width: PaperMm,
  height: PaperMm,
): number {
  const most = mostLines(height);
  return Math.max(...row.map((one) => captionLines(kit, one, width, most).length));
}

/** Paper that the pictures take in a grid, square millimetres. */
function pictured(input: SheetInput, photos: readonly ShownPhoto[], grid: Grid): number {
  const { width, height } = cellSize(bodyOf(input.paper), grid);
  const areas = rowsOf(photos, grid).flatMap((row) => {
    const room = pictureHeight(height, linesOf(input, row, width, height));
    return row.map((one) => fittedSize(ratioOf(one), width, room));
  });
  return areas.reduce((sum, size) => sum + size.width * size.height, 0);
}

/** The grid in which the photos of a page are largest. */
function gridFor(input: SheetInput, photos: readonly ShownPhoto[]): Grid {
  const { all } = gridsOf(input.paper);
  const holding = all.filter(([columns, rows]) => columns * rows >= photos.length);
  const sizes = holding.map((grid) => pictured(input, photos, grid));
  return holding[sizes.indexOf(Math.max(...sizes))]!;
}

/** The photos of each page: as few pages as hold them, filled alike; none without photos. */
export function photoPages({ record, paper, images = {} }: SheetInput): ShownPhoto[][] {
  const photos = shownPhotos(record.photos, images);
  if (photos.length === 0) return [];
  const { wide, tall } = gridsOf(paper);
  const most = photos.filter((one) => ratioOf(one) >= 1).length * 2 >= photos.length ? wide : tall;
  const each = Math.ceil(photos.length / Math.ceil(photos.length / most));
  const pages = Math.ceil(photos.length / each);
  return Array.from({ length: pages }, (_, at) => photos.slice(at * each, (at + 1) * each));
}

function drawPhotos(input: SheetInput, photos: readonly ShownPhoto[]): Item[] {
  const body = bodyOf(input.paper);
  const grid = gridFor(input, photos);
  const { width, height } = cellSize(body, grid);
  return rowsOf(photos, grid).flatMap((row, down) => {
    const lines = linesOf(input, row, width, height);
    return row.map((one, right) => {
      const x = body.x + right * (width + gutter);
      const y = body.y + down * (height + gutter);
      return drawPhoto(input.kit, one, { x, y, width, height }, lines);
    });
  });
}

/** A page of photos with their words, after the pages of the well. */
export function drawPhotoPage(
  input: SheetInput,
  photos: readonly ShownPhoto[],
  fields: TitleFields,
): Page {
  const { kit, paper } = input;
  const { frame } = paper;
  const title = kit.words.photos.title;
  return {
    width: paper.width,
    height: paper.height,
    items: [
      ...blockTitle(kit, title, frame.x + pad, frame.y + pad, frame.width - 2 * pad),
      group('photos', drawPhotos(input, photos)),
      drawTitle(input, 'photos', fields),
      drawFrame(input),
    ],
  };
}
