import { describe, expect, it } from 'vitest';
import type { PathItem } from '../../../../core/drawing/items.ts';
import {
  drawForbidden,
  drawPictogram,
  pictogramIds,
} from '../../../../core/drawing/pictograms/pictogram.ts';
import { extentOf } from '../../../sheets/extent.ts';
import { pathsIn } from '../trial.ts';

const place = { x: 40, y: 60, side: 16 };

/** How far the ink of a path reaches out of a square, millimetres. */
function outside(path: PathItem): number {
  const [left, top, right, bottom] = extentOf(path);
  const half = (path.stroke?.width ?? 0) / 2;
  return Math.max(
    place.x - (left - half),
    place.y - (top - half),
    right + half - place.x - place.side,
    bottom + half - place.y - place.side,
  );
}

describe.each(pictogramIds)('the pictogram %s', (id) => {
  const paths = pathsIn(drawPictogram(id, place));

  it('stands in its square', () => {
    expect(paths.length).toBeGreaterThan(1);
    expect(Math.max(...paths.map(outside))).toBeLessThan(0.03 * place.side);
  });

  it('is drawn in black and white, with round ends and joins', () => {
    for (const { stroke, fill } of paths) {
      expect(['#000000', '#ffffff', undefined]).toContain(fill);
      if (stroke) expect(stroke).toMatchObject({ ink: '#000000', cap: 'round', join: 'round' });
    }
  });

  it('has no line finer than 0.4 mm at the size of a calendar, so that a photocopy keeps it', () => {
    const small = pathsIn(drawPictogram(id, { ...place, side: 8.7 }));
    const widths = small.flatMap(({ stroke }) => stroke?.width ?? []);
    expect(Math.min(...widths)).toBeGreaterThan(0.4);
  });
});

it('what is forbidden has a bar drawn over it, edged with white', () => {
  const plain = pathsIn(drawPictogram('latrine', place));
  const paths = pathsIn(drawForbidden('latrine', place));
  expect(paths.slice(0, plain.length)).toEqual(plain);
  const [edge, bar] = paths.slice(plain.length);
  expect(edge!.stroke!.ink).toBe('#ffffff');
  expect(bar!.stroke!.ink).toBe('#000000');
  expect(edge!.stroke!.width).toBeGreaterThan(bar!.stroke!.width);
  expect(bar!.segments).toEqual([
    ['M', 42, 62],
    ['L', 54, 74],
  ]);
});
