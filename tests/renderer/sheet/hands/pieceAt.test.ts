import { describe, expect, it } from 'vitest';
import type { PageAxis } from '../../../../core/drawing/items.ts';
import { resolveWell } from '../../../../core/model/resolveWell.ts';
import { pieceAt } from '../../../../renderer/sheet/hands/pieceAt.ts';

const axis: PageAxis = {
  box: { x: 20, y: 20, width: 180, height: 200 },
  fromM: 0,
  toM: 20,
  stretches: [{ fromM: 0, toM: 20, top: 25 }],
  mmPerM: 5,
  mmPerMm: 0.1,
  spans: {
    water: { x: 29, width: 9 },
    ground: { x: 38, width: 14 },
    section: { x: 140, width: 40 },
  },
};
const pipe = (outside: number, length: number) =>
  ({ kind: 'plain', length, outside, wall: 5 }) as const;
const model = resolveWell({
  schemaVersion: 1,
  strings: [
    { components: [pipe(200, 10)], set: { by: 'bottom', depth: 10 } },
    { components: [pipe(100, 5), pipe(100, 25)], set: { by: 'bottom', depth: 30 } },
  ],
});
/** At metres below ground, and millimetres of paper beside the centre line. */
const at = (depthM: number, besideMm: number) =>
  pieceAt(model, [axis], { x: 160 + besideMm, y: 25 + 5 * depthM });

describe('a pipe that is pointed at', () => {
  it('is found anywhere between its walls', () => {
    expect(at(15, 0)).toBe('strings[1].components[1]');
    expect(at(15, -4.9)).toBe('strings[1].components[1]');
    expect(at(15, 5.1)).toBeUndefined();
  });

  it('is the inner one where two stand in each other', () => {
    expect(at(5, 3)).toBe('strings[1].components[1]');
    expect(at(5, 7)).toBe('strings[0].components[0]');
  });

  it('is none beyond what the page shows', () => {
    expect(at(26, 0)).toBeUndefined();
    expect(pieceAt(model, [], { x: 160, y: 50 })).toBeUndefined();
  });
});
