import { describe, expect, it } from 'vitest';
import {
  hatchFor,
  hatchForFill,
  hatchTiles,
  mixedHatch,
  tileFor,
  tilesFor,
} from '../../../../core/drawing/hatches/index.ts';
import { reachOf } from '../../../../core/drawing/hatches/wrap.ts';
import type { HatchTile, PathItem } from '../../../../core/drawing/items.ts';
import { fillKinds } from '../../../../core/record/annulus.ts';
import { materials } from '../../../../core/record/materials.ts';

const grounds = materials.map((one) => hatchFor(one));
const fills = [...fillKinds, 'unrecorded' as const].map((one) => hatchForFill(one));
const all = [...grounds, ...fills];

/** A mark's form wherever it stands. */
function form(mark: PathItem): string {
  const [, x, y] = mark.segments[0] as readonly ['M', number, number];
  const steps = mark.segments.map(([kind, ...rest]) => [
    kind,
    ...(rest as number[]).map((f, at) => (f - (at % 2 === 0 ? x : y)).toFixed(1)),
  ]);
  return JSON.stringify([steps, mark.fill ?? '']);
}

function forms(hatch: string): string {
  return [...new Set(tileFor(hatch).marks.map(form))].sort().join();
}

/** Whether marks show in a box laid anywhere on the repeated tile, in steps of 0.25 mm. */
function showsInEvery(tile: HatchTile, boxWidth: number, boxHeight: number): boolean {
  const reaches = tile.marks.map(reachOf);
  const covers = (from: number, to: number, at: number, length: number, side: number) => {
    for (let shift = -2 * side; shift <= 24 + side; shift += side)
      if (from + shift < at + length && to + shift > at) return true;
    return false;
  };
  for (let x = 0; x < tile.width; x += 0.25)
    for (let y = 0; y < tile.height; y += 0.25) {
      const seen = reaches.some(
        (r) =>
          covers(r.left, r.right, x, boxWidth, tile.width) &&
          covers(r.top, r.bottom, y, boxHeight, tile.height),
      );
      if (!seen) return false;
    }
  return true;
}

describe('hatches', () => {
  it('has a tile for every material and every fill', () => {
    expect(Object.keys(hatchTiles).sort()).toEqual([...all].sort());
  });

  it.each(all)('%s has a tile 4 to 12 mm wide that divides 12 mm', (hatch) => {
    const { width, height } = tileFor(hatch);
    expect(width).toBeGreaterThanOrEqual(4);
    expect(width).toBeLessThanOrEqual(12);
    expect([12 % width, 12 % height]).toEqual([0, 0]);
  });

  // Line widths and dots that survive copying: advice in the trade, from memory.
  it.each(all)('%s is drawn in lines of 0.13 to 0.25 mm and dots of 0.4 mm or more', (hatch) => {
    for (const mark of tileFor(hatch).marks) {
      const { left, right, top, bottom } = reachOf(mark);
      if (mark.stroke) {
        expect(mark.stroke.width).toBeGreaterThanOrEqual(0.13);
        expect(mark.stroke.width).toBeLessThanOrEqual(0.25);
      } else expect(Math.min(right - left, bottom - top)).toBeGreaterThanOrEqual(0.399);
    }
  });

  it('tells every ground from every other by the form of its marks', () => {
    expect(new Set(grounds.map(forms)).size).toBe(grounds.length);
  });

  it('tells every fill from every other by the form of its marks', () => {
    expect(new Set(fills.map(forms)).size).toBe(fills.length);
  });

  it.each(grounds)('%s shows its marks in a layer 3 mm thick across a column of 18 mm', (hatch) => {
    expect(showsInEvery(tileFor(hatch), 18, 3)).toBe(true);
  });

  it.each(fills.filter((one) => one !== hatchForFill('open')))(
    '%s shows its marks in a strip 2 mm wide and 6 mm long',
    (hatch) => {
      expect(showsInEvery(tileFor(hatch), 2, 6)).toBe(true);
    },
  );

  it('leaves an open annulus empty', () => {
    expect(tileFor(hatchForFill('open')).marks).toEqual([]);
  });

  it('paints the clay of the log and the clay seal of the annulus with different marks', () => {
    expect(forms(hatchForFill('claySeal'))).not.toBe(forms('clay'));
  });

  // FGDC-STD-013-2006 in words: 607 dots, 627 brick courses, 721 plus signs in a regular grid.
  it('follows the convention for sand, limestone and igneous rock', () => {
    expect(tileFor('sand').marks.every((mark) => mark.fill && !mark.stroke)).toBe(true);
    const longest = tileFor('limestone').marks.filter((mark) => {
      const { left, right } = reachOf(mark);
      return right - left >= 4;
    });
    expect(longest).toHaveLength(2);
    expect(new Set(tileFor('igneousRock').marks.map(form)).size).toBe(1);
  });
});

describe('tilesFor', () => {
  it('gives each hatch asked for once', () => {
    const tiles = tilesFor(['sand', 'sand+clay', 'sand']);
    expect(Object.keys(tiles)).toEqual(['sand', 'sand+clay']);
  });

  it('takes an unknown hatch for a defect', () => {
    expect(() => tilesFor(['cheese'])).toThrow('There is no hatch cheese');
    expect(() => tilesFor(['sand+cheese'])).toThrow('sand+cheese');
  });
});

describe('mixedHatch', () => {
  it('is the plain hatch where both materials are the same', () => {
    expect(mixedHatch('sand', 'sand')).toBe('sand');
    expect(mixedHatch('sand', 'clay')).toBe('sand+clay');
  });
});
