import { TilingPattern } from 'jspdf';
import type { HatchTile } from '../../drawing/items.ts';
import { Content } from './content.ts';
import { write } from './inside.ts';
import { paintPath } from './path.ts';
import { pointsPerMm } from './pointsPerMm.ts';
import type { Sheet } from './sheet.ts';

/**
 * How far, in mm, a tile shows marks beyond its edge. Where tiles only touch, viewers that paint
 * a tile to whole dots leave gaps in lines that run across; what overlaps is the same twice.
 */
const overlap = 0.2;

/**
 * Tile of a page of one height. Its own matrix leads from the points of the page, counted from
 * the bottom left, to millimetres from the top left, so that tiles start at the same corner as on
 * screen. A matrix given with each use would copy the tile each time.
 */
function tilingOf({ book, page }: Sheet, { width, height }: HatchTile): TilingPattern {
  const k = pointsPerMm;
  const matrix = book.doc.Matrix(k, 0, 0, -k, 0, k * page.height);
  const shown = [-overlap, -overlap, width + overlap, height + overlap];
  return new TilingPattern(shown, width, height, undefined, matrix);
}

/** Name under which content of this page calls the hatch; written on first use. */
export function patternName(sheet: Sheet, hatch: string): string {
  const { doc, patternsIn } = sheet.book;
  const key = `${hatch} on ${sheet.page.height}`;
  const known = patternsIn.get(key);
  if (known) return known;
  const tile = sheet.hatches[hatch];
  if (!tile) throw new Error(`The drawing has no hatch called ${hatch}`);
  const tiling = tilingOf(sheet, tile);
  doc.advancedAPI(() => {
    doc.beginTilingPattern(tiling);
    const content = Content.ofTile((words) => write(doc, words));
    for (const mark of tile.marks) paintPath(content, mark);
    doc.endTilingPattern(key, tiling);
  });
  const name = (tiling as TilingPattern & { readonly id: string }).id;
  patternsIn.set(key, name);
  return name;
}
