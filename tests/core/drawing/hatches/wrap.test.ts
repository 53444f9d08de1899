import { describe, expect, it } from 'vitest';
import { hatchTiles, mixedHatch, tileFor } from '../../../../core/drawing/hatches/index.ts';
import { dash, dot, moved } from '../../../../core/drawing/hatches/marks.ts';
import { reachOf, wrap } from '../../../../core/drawing/hatches/wrap.ts';
import type { HatchTile, PathItem } from '../../../../core/drawing/items.ts';
import { materials } from '../../../../core/record/materials.ts';
import { crossings } from './edges.ts';

const mixtures = materials.flatMap((material) =>
  (['clay', 'gravel', 'limestone'] as const)
    .filter((second) => second !== material)
    .map((second) => mixedHatch(material, second)),
);
const tiles: [string, HatchTile][] = [
  ...Object.entries(hatchTiles),
  ...mixtures.map((name): [string, HatchTile] => [name, tileFor(name)]),
];

const near = 0.003;

/** Outlines are met a little past the edge, since a corner may just touch it. */
const past = 0.002;

function figures(mark: PathItem): number[] {
  return mark.segments.flatMap(([, ...rest]) => rest as number[]);
}

function standsAt(marks: readonly PathItem[], mark: PathItem, dx: number, dy: number): boolean {
  const wanted = figures(moved(mark, [dx, dy]));
  return marks.some((one) => {
    const found = figures(one);
    return (
      found.length === wanted.length && found.every((f, at) => Math.abs(f - wanted[at]!) < near)
    );
  });
}

/**
 * Courses and waves of a mixture overlap their own repetition instead of standing at a whole
 * square's distance; that they go on is seen by the outlines.
 */
function isCourse(mark: PathItem, { width }: HatchTile): boolean {
  const { left, right, top, bottom } = reachOf(mark);
  return width === 12 && Math.max(right - left, bottom - top) > 4;
}

/** Shifts at which a mark's repetition is seen within the tile and has to stand there. */
function shiftsSeen(mark: PathItem, { width, height }: HatchTile): [number, number][] {
  const { left, right, top, bottom } = reachOf(mark);
  const along = (from: number, to: number, side: number) =>
    from <= 0 && to >= side
      ? [0]
      : [-side, 0, side].filter((d) => from + d < side - near && to + d > near);
  return along(left, right, width).flatMap((dx) =>
    along(top, bottom, height).map((dy): [number, number] => [dx, dy]),
  );
}

describe('the seam of a hatch', () => {
  it.each(tiles)('%s has every mark that crosses an edge at the opposite edge too', (_, tile) => {
    const lacking = tile.marks
      .filter((mark) => !isCourse(mark, tile))
      .filter((mark) =>
        shiftsSeen(mark, tile).some(([dx, dy]) => !standsAt(tile.marks, mark, dx, dy)),
      );
    expect(lacking).toEqual([]);
  });

  it.each(tiles)('%s is met at opposite edges by outlines at the same places', (_, tile) => {
    for (const [axis, side] of [
      [0, tile.width],
      [1, tile.height],
    ] as const) {
      const first = crossings(tile, axis, past);
      const last = crossings(tile, axis, side + past);
      expect(last.length).toBe(first.length);
      first.forEach((place, one) => expect(Math.abs(place - last[one]!)).toBeLessThan(0.01));
    }
  });
});

describe('wrap', () => {
  it('leaves a mark within the tile alone', () => {
    expect(wrap(4, 4, [moved(dot(), [2, 2])]).marks).toHaveLength(1);
  });

  it('repeats a mark over one edge once and over a corner three times', () => {
    expect(wrap(4, 4, [moved(dot(), [4, 2])]).marks).toHaveLength(2);
    expect(wrap(4, 4, [moved(dot(), [0, 0])]).marks).toHaveLength(4);
  });

  it('counts half the line to the reach of a mark', () => {
    const line = moved(dash(1, { pen: 'narrow' }), [2, 0.1]);
    expect(reachOf(line).top).toBeCloseTo(-0.025, 6);
    expect(wrap(4, 4, [line]).marks).toHaveLength(2);
  });

  it('does not repeat along its own direction a line that goes from edge to edge', () => {
    expect(wrap(4, 4, [moved(dash(5), [2, 2])]).marks).toHaveLength(1);
  });

  it('is refuted where a mark is cut at one edge only', () => {
    const cut = { width: 4, height: 4, marks: [moved(dash(1), [4, 2])] };
    expect(crossings(cut, 0, 4)).toEqual([2]);
    expect(crossings(cut, 0, 0)).toEqual([]);
  });
});
