import { describe, expect, it } from 'vitest';
import type { PageAxis } from '../../../../core/drawing/items.ts';
import type { Handle } from '../../../../renderer/state/hands/handle.ts';
import { depthOf, yOf } from '../../../../core/drawing/scale.ts';
import { isOn, placesOn } from '../../../../renderer/sheet/hands/place.ts';

const axis: PageAxis = {
  box: { x: 20, y: 20, width: 180, height: 200 },
  fromM: 10,
  toM: 40,
  stretches: [{ fromM: 10, toM: 40, top: 25 }],
  mmPerM: 5,
  mmPerMm: 0.1,
  spans: {
    water: { x: 29, width: 9 },
    ground: { x: 38, width: 14 },
    section: { x: 138, width: 37 },
  },
};

function handle(id: string, depthM: number, lane: Handle['lane'], ringMm?: Handle['ringMm']) {
  const base = { edge: { kind: 'intake' }, leastM: 0, mostM: 50, roundFromM: 0 } as const;
  return { ...base, id, depthM, lane, row: id, writes: [], ...(ringMm && { ringMm }) };
}

const placed = (...handles: Handle[]) => placesOn(axis, handles, 3);

describe('where an edge stands on a page', () => {
  it('is where the axis says', () => {
    expect(yOf(axis, 12)).toBe(35);
    expect(depthOf(axis, 35)).toBe(12);
  });

  it('is told only of those that the page shows, with those on its ends', () => {
    expect([9.9, 10, 25, 40, 40.1].map((depthM) => isOn(axis, depthM))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
    expect(placed(handle('a', 9, 'ground'), handle('b', 12, 'ground'))).toHaveLength(1);
  });

  it('can be taken hold of as far as a hand reaches, and no farther than half way to the next', () => {
    const [a, b, c] = placed(
      handle('a', 12, 'ground'),
      handle('b', 12.4, 'ground'),
      handle('c', 20, 'ground'),
    );
    expect([a!.up, a!.down]).toEqual([3, 1]);
    expect([b!.up, b!.down]).toEqual([1, 3]);
    expect([c!.up, c!.down]).toEqual([3, 3]);
  });

  it('is not narrowed by an edge of another column', () => {
    const [a] = placed(handle('a', 12, 'ground'), handle('b', 12.1, 'annulus'));
    expect(a!.down).toBe(3);
  });

  it('is both sides of the casing for what stands in the annulus', () => {
    const [a] = placed(handle('a', 12, 'annulus', { inner: 125, outer: 200 }));
    const centre = 138 + 37 / 2;
    expect(a!.spans).toEqual([
      { x: centre - 10, width: 3.75 },
      { x: centre + 6.25, width: 3.75 },
    ]);
  });

  it('is wide enough for a hand in a narrow annulus', () => {
    const [a] = placed(handle('a', 12, 'annulus', { inner: 125, outer: 130 }));
    for (const { width } of a!.spans) expect(width).toBe(2.5);
  });

  it('never leaves the section’s column', () => {
    const wide = { inner: 900, outer: 2000 };
    for (const lane of ['annulus', 'inside', 'joints', 'bore'] as const)
      for (const { x, width } of placed(handle('a', 12, lane, wide))[0]!.spans) {
        expect(x).toBeGreaterThanOrEqual(138);
        expect(x + width).toBeLessThanOrEqual(138 + 37);
        expect(width).toBeGreaterThan(0);
      }
  });

  it('is across the section where no diameter is known', () => {
    const bare = Object.fromEntries(
      Object.entries(axis).filter(([key]) => key !== 'mmPerMm'),
    ) as unknown as PageAxis;
    const [a] = placesOn(bare, [handle('a', 12, 'annulus')], 3);
    expect(a!.spans).toHaveLength(1);
  });

  it('is nowhere for a depth that a break leaves out, and at its height below the break', () => {
    const stretches = [
      { fromM: 10, toM: 15, top: 25 },
      { fromM: 30, toM: 40, top: 56 },
    ];
    const all = [handle('a', 20, 'ground'), handle('b', 32, 'ground')];
    expect(
      placesOn({ ...axis, stretches }, all, 3).map(({ handle: { id }, y }) => [id, y]),
    ).toEqual([['b', 66]]);
  });

  it('tells strikes from their rises', () => {
    const [strike, rise] = placed(handle('s', 12, 'strikes'), handle('r', 12, 'rises'));
    const end = rise!.spans[0]!.x + rise!.spans[0]!.width;
    expect(strike!.spans[0]!.x).toBeCloseTo(end, 9);
  });
});
