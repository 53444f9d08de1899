import { seededRandom } from '../../base/random.ts';
import type { PaperMm } from '../../base/units.ts';
import type { PathItem } from '../items.ts';
import type { Point } from '../shapes.ts';
import { moved, turned } from './marks.ts';

/** Sides of the tile that places are counted on. */
export interface Sides {
  readonly width: PaperMm;
  readonly height: PaperMm;
}

/** Rows of places, every second row set off by half a step. */
export function staggered({ width, height }: Sides, columns: number, rows: number): Point[] {
  const stepX = width / columns;
  const stepY = height / rows;
  return Array.from({ length: columns * rows }, (_, at) => {
    const row = Math.floor(at / columns);
    const shift = row % 2 === 0 ? 0.25 : 0.75;
    return [((at % columns) + shift) * stepX, (row + 0.5) * stepY];
  });
}

/** Each place moved by up to `by` along both sides, the same for the same seed. */
export function jittered(places: readonly Point[], by: PaperMm, seed: number): Point[] {
  const random = seededRandom(seed);
  const slip = () => (random() * 2 - 1) * by;
  return places.map(([x, y]) => [x + slip(), y + slip()]);
}

/** Distance on a tile that repeats: the shorter way round. */
function apart(a: Point, b: Point, { width, height }: Sides): PaperMm {
  const across = Math.abs(a[0] - b[0]);
  const down = Math.abs(a[1] - b[1]);
  return Math.hypot(Math.min(across, width - across), Math.min(down, height - down));
}

const trials = 60;

/** Places without order and yet evenly spread: each new one is the best of some tries. */
export function scattered(sides: Sides, count: number, seed: number): Point[] {
  const random = seededRandom(seed);
  const places: Point[] = [];
  const room = (one: Point) => Math.min(...places.map((other) => apart(one, other, sides)));
  while (places.length < count) {
    const tries = Array.from({ length: trials }, (): Point => [
      random() * sides.width,
      random() * sides.height,
    ]);
    places.push(tries.reduce((best, one) => (room(one) > room(best) ? one : best)));
  }
  return places;
}

/** One mark at every place. */
export function at(places: readonly Point[], mark: PathItem): PathItem[] {
  return places.map((place) => moved(mark, place));
}

/** Marks by turns along rows, each pair of rows beginning one mark later. */
export function alternating(
  sides: Sides,
  columns: number,
  rows: number,
  marks: readonly PathItem[],
): PathItem[] {
  return staggered(sides, columns, rows).map((place, one) => {
    const turn = (one % columns) + Math.floor(one / columns / 2);
    return moved(marks[turn % marks.length]!, place);
  });
}

/**
 * Shares of places that were scattered: so many for each mark in turn. The first places of a
 * scatter lie farthest apart, so the largest mark comes first.
 */
export function shared(
  places: readonly Point[],
  shares: readonly (readonly [count: number, mark: PathItem])[],
): PathItem[] {
  const marks = shares.flatMap(([count, mark]) => Array.from({ length: count }, () => mark));
  return places.map((place, one) => moved(marks[one]!, place));
}

/** Marks in turn, one to a place. */
export function inTurn(places: readonly Point[], marks: readonly PathItem[]): PathItem[] {
  return places.map((place, one) => moved(marks[one % marks.length]!, place));
}

/** One mark at every place, turned anyhow. */
export function tumbled(places: readonly Point[], mark: PathItem, seed: number): PathItem[] {
  const random = seededRandom(seed);
  return places.map((place) => moved(turned(mark, random() * 360), place));
}
