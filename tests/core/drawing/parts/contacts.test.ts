import { describe, expect, it } from 'vitest';
import { contactSign, type Boundary } from '../../../../core/drawing/parts/contacts.ts';
import { kit, pathsOf, textsOf } from '../sample.ts';

const sign = (boundary: Boundary | undefined, bed = 10) =>
  contactSign(kit, boundary, [20, 50], 14, bed, 'log[1]');

const widthsOf = (items: ReturnType<typeof sign>) =>
  items.flatMap(pathsOf).map(({ stroke }) => stroke!.width);

describe('the sign of a contact', () => {
  it('is one full line where sharp, or where nobody wrote how it is', () => {
    for (const items of [sign('sharp'), sign(undefined)]) {
      const [line, ...more] = items.flatMap(pathsOf);
      expect(line!.stroke!.dash).toBeUndefined();
      expect(more).toEqual([]);
    }
  });

  it('is a zone of slanted strokes within the width where gradual', () => {
    const [band, ...strokes] = sign('gradual').flatMap(pathsOf);
    expect(band!.stroke!.ink).toBe('#ffffff');
    expect(strokes.length).toBeGreaterThan(5);
    for (const { segments } of strokes) {
      const [[, left, foot], [, right, top]] = segments as [
        ['M', number, number],
        ['L', number, number],
      ];
      expect(left).toBeGreaterThanOrEqual(20);
      expect(right).toBeLessThanOrEqual(34);
      expect((foot + top) / 2).toBeCloseTo(50);
    }
  });

  it('keeps a gradual zone from hiding a thin bed', () => {
    const zone = (bed: number) => Math.max(...widthsOf(sign('gradual', bed)));
    for (const bed of [0.5, 1, 2, 2.6, 3, 4, 9]) expect(zone(bed)).toBeLessThanOrEqual(bed / 2);
  });

  it('is a dashed line with a question mark where uncertain', () => {
    const items = sign('uncertain');
    expect(items.flatMap(pathsOf).some(({ stroke }) => stroke!.dash)).toBe(true);
    expect(items.flatMap(textsOf).map(({ text }) => text)).toEqual(['?']);
  });

  it('leads back to its interval', () => {
    for (const boundary of ['sharp', 'gradual', 'uncertain'] as const)
      for (const item of sign(boundary)) expect(item.source).toBe('log[1]');
  });
});
