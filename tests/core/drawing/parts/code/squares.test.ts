import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../../core/base/random.ts';
import { outlineOf } from '../../../../../core/drawing/parts/code/squares.ts';
import type { Segment } from '../../../../../core/drawing/items.ts';

const rows = (text: string) => text.split(' ').map((row) => [...row].map((one) => one === '#'));

/** How often the outline runs round a point: the rule by which painters fill. */
function windings(segments: readonly Segment[], px: number, py: number): number {
  let [count, startX, startY, x, y] = [0, 0, 0, 0, 0];
  const to = (nextX: number, nextY: number) => {
    if (x > px && y <= py && nextY > py) count += 1;
    if (x > px && y > py && nextY <= py) count -= 1;
    [x, y] = [nextX, nextY];
  };
  for (const one of segments) {
    if (one[0] === 'M') [startX, startY, x, y] = [one[1], one[2], one[1], one[2]];
    if (one[0] === 'L') to(one[1], one[2]);
    if (one[0] === 'Z') to(startX, startY);
  }
  return count;
}

describe('the outline of dark squares', () => {
  it('goes once round one square', () => {
    expect(outlineOf(rows('#'), 10, 20, 2)).toEqual([
      ['M', 10, 20],
      ['L', 12, 20],
      ['L', 12, 22],
      ['L', 10, 22],
      ['Z'],
    ]);
  });

  it('keeps squares apart that touch at a corner', () => {
    expect(outlineOf(rows('#. .#'), 0, 0, 1).filter(([kind]) => kind === 'M')).toHaveLength(2);
  });

  it('fills what is dark and nothing else, with islands and lakes', () => {
    const random = seededRandom(4);
    for (let trial = 0; trial < 50; trial += 1) {
      const squares = Array.from({ length: 9 }, () =>
        Array.from({ length: 9 }, () => random() < 0.5),
      );
      const segments = outlineOf(squares, 0, 0, 1);
      const filled = squares.map((row, y) =>
        row.map((_, x) => windings(segments, x + 0.5, y + 0.5) !== 0),
      );
      expect(filled).toEqual(squares);
    }
  });
});
