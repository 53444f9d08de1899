import { describe, expect, it } from 'vitest';
import { srgbProfile } from '../../../../core/paint/pdf/icc.ts';

const bytes = Buffer.from(srgbProfile(), 'latin1');
const letters = (from: number, to: number) => bytes.toString('latin1', from, to);
const fixed = (at: number) => bytes.readInt32BE(at) / 0x10000;
const numbers = (at: number, count: number) =>
  Array.from({ length: count }, (_, one) => fixed(at + 4 * one));

/** Where each tag's data lies: count, then twelve bytes each (ICC.1:2004-10, 7.3). */
const tags = new Map(
  Array.from({ length: bytes.readUInt32BE(128) }, (_, one) => {
    const at = 132 + 12 * one;
    const place = { from: bytes.readUInt32BE(at + 4), length: bytes.readUInt32BE(at + 8) };
    return [letters(at, at + 4), place];
  }),
);
const dataOf = (tag: string) => tags.get(tag)!.from + 8;

function expectNear(found: readonly number[], published: readonly number[], digits: number): void {
  expect(found).toHaveLength(published.length);
  published.forEach((value, at) => expect(found[at]).toBeCloseTo(value, digits));
}

/** The stored value's share of light as the profile's curve has it (ICC.1:2004-10, 10.15). */
function light(stored: number): number {
  const [g, a, b, c, d] = numbers(dataOf('gTRC') + 4, 5) as [
    number,
    number,
    number,
    number,
    number,
  ];
  return stored >= d ? (a * stored + b) ** g : c * stored;
}

describe('the profile of sRGB', () => {
  it('has the header of a display profile of version 4.2', () => {
    expect(bytes.readUInt32BE(0)).toBe(bytes.length);
    expect(bytes.readUInt32BE(8)).toBe(0x04200000);
    expect(letters(12, 24)).toBe('mntrRGB XYZ ');
    expect(letters(36, 40)).toBe('acsp');
    // D50 as ICC.1:2004-10, 7.2.16, has it.
    expect([68, 72, 76].map((at) => bytes.readUInt32BE(at))).toEqual([0xf6d6, 0x10000, 0xd32d]);
  });

  it('has the tags that ICC.1 asks of such a profile, each on a limit of four bytes', () => {
    const asked = ['desc', 'cprt', 'wtpt', 'chad', 'rXYZ', 'gXYZ', 'bXYZ', 'rTRC', 'gTRC', 'bTRC'];
    expect([...tags.keys()]).toEqual(asked);
    for (const { from, length } of tags.values()) {
      expect(from % 4).toBe(0);
      expect(from + length).toBeLessThanOrEqual(bytes.length);
    }
  });

  it('has the primaries of IEC 61966-2-1 under the white of the connection space', () => {
    // The matrix of sRGB adapted to D50 by Bradford, as it is widely published; from memory.
    expectNear(numbers(dataOf('rXYZ'), 3), [0.4360747, 0.2225045, 0.0139322], 3);
    expectNear(numbers(dataOf('gXYZ'), 3), [0.3850649, 0.7168786, 0.0971045], 3);
    expectNear(numbers(dataOf('bXYZ'), 3), [0.1430804, 0.0606169, 0.7141733], 3);
    const sums = ['rXYZ', 'gXYZ', 'bXYZ'].map((tag) => numbers(dataOf(tag), 3));
    const white = [0, 1, 2].map((at) => sums.reduce((sum, one) => sum + one[at]!, 0));
    expectNear(white, [0.9642, 1, 0.8249], 4);
  });

  it('says by which matrix the white was adapted', () => {
    // Bradford from D65 to D50, widely published; from memory.
    const published = [
      ...[1.0478112, 0.0228866, -0.050127],
      ...[0.0295424, 0.9904844, -0.0170491],
      ...[-0.0092345, 0.0150436, 0.7521316],
    ];
    expectNear(numbers(dataOf('chad'), 9), published, 3);
  });

  it('has the curve of IEC 61966-2-1', () => {
    expect(letters(tags.get('gTRC')!.from, dataOf('gTRC'))).toBe('para\0\0\0\0');
    expect(bytes.readUInt16BE(dataOf('gTRC'))).toBe(3);
    // 5.2 of the standard (from memory): linear up to 0.04045, a power of 2.4 beyond.
    expect(light(0)).toBe(0);
    expect(light(0.04)).toBeCloseTo(0.04 / 12.92, 5);
    expect(light(0.5)).toBeCloseTo(0.214041, 4);
    expect(light(1)).toBeCloseTo(1, 4);
    expect(tags.get('rTRC')).toEqual(tags.get('gTRC'));
    expect(tags.get('bTRC')).toEqual(tags.get('gTRC'));
  });
});
