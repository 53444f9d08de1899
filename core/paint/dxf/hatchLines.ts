import type { HatchTile, PathItem } from '../../drawing/items.ts';
import { boundsOf, clipChain, isInside, type Area } from './clip.ts';
import { flatten, type Chain } from './flatten.ts';

/** A mark of a hatch where it stands on the page. */
export interface HatchMark {
  readonly mark: PathItem;
  readonly chains: readonly Chain[];
  /** Nothing of it was cut off, so that it may be filled. */
  readonly whole: boolean;
}

function moved(chains: readonly Chain[], dx: number, dy: number): Chain[] {
  return chains.map(({ points, closed }) => ({
    points: points.map(([x, y]) => [x + dx, y + dy] as const),
    closed,
  }));
}

interface Laid {
  readonly mark: PathItem;
  readonly chains: readonly Chain[];
}

function marksAt(laid: readonly Laid[], dx: number, dy: number, area: Area): HatchMark[] {
  return laid.flatMap(({ mark, chains }) => {
    const here = moved(chains, dx, dy);
    const whole = here.every(({ points }) => points.every((point) => isInside(point, area)));
    const kept = whole ? here : here.flatMap((chain) => clipChain(chain, area));
    return kept.length === 0 ? [] : [{ mark, chains: kept, whole }];
  });
}

/**
 * The marks of a hatch over an area, cut at its outline. Tiles lie from the page's corner, as
 * every painter lays them, so that neighbouring areas join.
 */
export function hatchMarks(tile: HatchTile, area: Area): HatchMark[] {
  const bounds = boundsOf(area);
  if (!bounds) return [];
  const laid = tile.marks.map((mark) => ({ mark, chains: flatten(mark.segments) }));
  const found: HatchMark[] = [];
  const [fromX, fromY] = [
    Math.floor(bounds.left / tile.width),
    Math.floor(bounds.top / tile.height),
  ];
  for (let row = fromY; row * tile.height < bounds.bottom; row += 1)
    for (let column = fromX; column * tile.width < bounds.right; column += 1)
      found.push(...marksAt(laid, column * tile.width, row * tile.height, area));
  return found;
}
