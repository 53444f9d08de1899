import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../core/base/random.ts';
import { placeLabels, placeLedLabels, type Named } from '../../../../core/drawing/map/labels.ts';

const gap = 10;
const sign = (x: number, y: number, width = 50): Named => ({ x, y, width, height: 12 });

describe('labels on a map', () => {
  it('stand to the right of their signs, at their height, where there is room', () => {
    expect(placeLabels([sign(100, 100)], gap)).toEqual([{ x: 110, y: 94 }]);
  });

  it('give way to the left, above and below', () => {
    const [first, second] = placeLabels([sign(100, 100), sign(130, 100)], gap);
    expect(first).toEqual({ x: 40, y: 94 });
    expect(second).toEqual({ x: 140, y: 94 });
    const [, , , between] = placeLabels(
      [sign(100, 70, 1), sign(60, 100), sign(140, 100), sign(100, 100)],
      gap,
    );
    expect(between).toEqual({ x: 75, y: 78 });
  });

  it('stay in the frame, on another side of their sign or not at all', () => {
    const frame = { width: 200, height: 150 };
    expect(placeLabels([sign(180, 100)], gap, frame)).toEqual([{ x: 120, y: 94 }]);
    expect(placeLabels([sign(3, 3), sign(100, 149, 150)], gap, frame)).toEqual([
      undefined,
      { x: 25, y: 127 },
    ]);
  });

  it('are left out where there is no room at all', () => {
    const crowd = Array.from({ length: 6 }, () => sign(0, 0));
    const places = placeLabels(crowd, gap);
    expect(places.filter((place) => place !== undefined)).toHaveLength(4);
    expect(places.slice(0, 4)).not.toContain(undefined);
  });

  it('never lie on one another or on a sign, however the signs lie', () => {
    const random = seededRandom(7);
    const signs = Array.from({ length: 400 }, () => sign(random() * 900, random() * 600));
    const places = placeLabels(signs, gap);
    const boxes = places.flatMap((place) => (place ? [{ ...place, w: 50, h: 12 }] : []));
    expect(boxes.length).toBeGreaterThan(50);
    const clash = boxes.filter((a, at) =>
      boxes.some(
        (b, other) =>
          other > at && a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h,
      ),
    );
    expect(clash).toEqual([]);
    const covered = signs.filter(({ x, y }) =>
      boxes.some((box) => x > box.x && x < box.x + box.w && y > box.y && y < box.y + box.h),
    );
    expect(covered).toEqual([]);
  });
});

describe('labels that may stand off their signs', () => {
  const frame = { width: 1000, height: 800 };
  const random = seededRandom(11);
  const crowds = Array.from({ length: 8 }, () =>
    Array.from({ length: 160 }, () => sign(60 + random() * 880, 60 + random() * 680)),
  );
  const inBox = (x: number, y: number, at: { x: number; y: number }, { width, height }: Named) =>
    x > at.x && x < at.x + width && y > at.y && y < at.y + height;

  it('find room where labels beside their signs do not', () => {
    const without = (places: readonly unknown[]) => places.filter((place) => !place).length;
    const beside = crowds.map((signs) => without(placeLabels(signs, gap, frame)));
    const led = crowds.map((signs) => without(placeLedLabels(signs, { gap, frame })));
    expect(beside.every((count) => count > 0)).toBe(true);
    led.forEach((count, at) => expect(count).toBeLessThan(beside[at]!));
  });

  it('have leaders that begin at their sign, end at their label and cross no other', () => {
    for (const signs of crowds) {
      const places = placeLedLabels(signs, { gap, frame });
      places.forEach((place, at) => {
        if (!place?.leader) return;
        const [[fx, fy], [tx, ty]] = place.leader;
        const own = signs[at]!;
        expect(Math.hypot(fx - own.x, fy - own.y)).toBeLessThan(gap);
        expect(tx).toBeGreaterThanOrEqual(place.x - 1e-9);
        expect(tx).toBeLessThanOrEqual(place.x + own.width + 1e-9);
        expect(ty).toBeGreaterThanOrEqual(place.y - 1e-9);
        expect(ty).toBeLessThanOrEqual(place.y + own.height + 1e-9);
        for (let share = 0; share <= 1; share += 0.02) {
          const [x, y] = [fx + share * (tx - fx), fy + share * (ty - fy)];
          const crossed = places.findIndex(
            (other, n) => n !== at && other && inBox(x, y, other, signs[n]!),
          );
          expect(crossed).toBe(-1);
        }
      });
    }
  });

  it('go before those of signs that are not their own', () => {
    const [first] = crowds;
    const signs = [...first!.slice(60), ...first!.slice(0, 60)];
    const alone = placeLedLabels(signs.slice(0, 30), { gap, frame });
    const among = placeLedLabels(signs, { gap, frame }, 30);
    const named = (places: readonly unknown[]) => places.filter(Boolean).length;
    expect(among).toHaveLength(160);
    expect(named(among.slice(0, 30))).toBe(named(alone));
    expect(among.slice(30).every((place) => !place?.leader)).toBe(true);
  });
});
