import { describe, expect, it } from 'vitest';
import { mixedHatch, tileFor } from '../../../../core/drawing/hatches/index.ts';
import { reachOf } from '../../../../core/drawing/hatches/wrap.ts';
import type { HatchTile, PathItem } from '../../../../core/drawing/items.ts';
import { materials } from '../../../../core/record/materials.ts';

function isDot(mark: PathItem): boolean {
  const { left, right } = reachOf(mark);
  return mark.fill !== undefined && right - left < 0.6;
}

/** Marks for each 144 square millimetres, those over an edge counted where their middle lies. */
function marksOf({ width, height, marks }: HatchTile, wanted: (mark: PathItem) => boolean): number {
  const inside = marks.filter((mark) => {
    const { left, right, top, bottom } = reachOf(mark);
    const [x, y] = [(left + right) / 2, (top + bottom) / 2];
    return wanted(mark) && x >= 0 && x < width && y >= 0 && y < height;
  });
  return (inside.length * 144) / (width * height);
}

describe('mixedTile', () => {
  it('keeps two thirds of the main material’s marks or more', () => {
    for (const second of ['clay', 'gravel', 'laterite', 'silt'] as const)
      expect(marksOf(tileFor(mixedHatch('sand', second)), isDot)).toBeGreaterThanOrEqual(
        (marksOf(tileFor('sand'), isDot) * 2) / 3,
      );
  });

  it('sets fewer than half as many of the second’s marks as it has by itself', () => {
    const isDash = (mark: PathItem) => mark.stroke !== undefined;
    const alone = marksOf(tileFor('clay'), isDash);
    const mixed = marksOf(tileFor('sand+clay'), isDash);
    expect(mixed).toBeGreaterThan(0);
    expect(mixed).toBeLessThanOrEqual(alone / 2);
  });

  it('adds marks to every main material', () => {
    for (const main of materials.filter((one) => one !== 'laterite')) {
      const lozenges = tileFor(mixedHatch(main, 'laterite')).marks.filter(
        (mark) => mark.segments.length === 5 && mark.fill !== undefined,
      );
      expect([main, lozenges.length > 3]).toEqual([main, true]);
    }
  });

  it('paints the second’s marks white on solid black', () => {
    const [, ...added] = tileFor('coal+clay').marks;
    expect(added.length).toBeGreaterThan(0);
    expect(added.every((mark) => mark.stroke?.ink === '#ffffff')).toBe(true);
  });

  it('draws the same mixture each time', () => {
    expect(tileFor('gravel+clay')).toEqual(tileFor('gravel+clay'));
  });
});
