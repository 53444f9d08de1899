import { expect, it } from 'vitest';
import type { Segment } from '../../../core/drawing/items.ts';
import { boxOutline, circle, group, line, outline } from '../../../core/drawing/shapes.ts';
import { solid } from '../../../core/drawing/pens.ts';

type Curve = Extract<Segment, readonly ['C', ...number[]]>;

/** A point of a cubic curve, after its definition. */
function along(start: readonly [number, number], curve: Curve, t: number): [number, number] {
  const [, x1, y1, x2, y2, x3, y3] = curve;
  const at = (a: number, b: number, c: number, d: number) =>
    a * (1 - t) ** 3 + 3 * b * t * (1 - t) ** 2 + 3 * c * t * t * (1 - t) + d * t ** 3;
  return [at(start[0], x1, x2, x3), at(start[1], y1, y2, y3)];
}

it('a circle keeps its radius all round within 0.03 %', () => {
  const { segments } = circle([10, 20], 4, {});
  let from: [number, number] = [14, 20];
  for (const one of segments.filter((each): each is Curve => each[0] === 'C')) {
    for (let t = 0; t <= 1; t += 0.05) {
      const [x, y] = along(from, one, t);
      expect(Math.abs(Math.hypot(x - 10, y - 20) / 4 - 1)).toBeLessThan(0.0003);
    }
    from = [one[5], one[6]];
  }
  expect(from).toEqual([14, 20]);
});

it('an outline begins with a move and closes when asked', () => {
  expect(
    outline([
      [0, 0],
      [1, 0],
    ]),
  ).toEqual([
    ['M', 0, 0],
    ['L', 1, 0],
  ]);
  expect(boxOutline({ x: 1, y: 2, width: 3, height: 4 })).toEqual([
    ['M', 1, 2],
    ['L', 4, 2],
    ['L', 4, 6],
    ['L', 1, 6],
    ['Z'],
  ]);
});

it('what has no source carries no key for it', () => {
  expect('source' in line([0, 0], [1, 1], solid('thin'))).toBe(false);
  expect('source' in group('part', [], { source: undefined })).toBe(false);
  expect(line([0, 0], [1, 1], solid('thin'), 'bore').source).toBe('bore');
});
