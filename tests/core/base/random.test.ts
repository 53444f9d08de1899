import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/base/random.ts';

function drawn(seed: number, count: number): number[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, random);
}

describe('seededRandom', () => {
  it('gives the same numbers for the same seed and others for another', () => {
    expect(drawn(7, 20)).toEqual(drawn(7, 20));
    expect(drawn(7, 20)).not.toEqual(drawn(8, 20));
  });

  it('stays from 0 up to 1 and fills that range evenly', () => {
    const numbers = drawn(1, 10_000);
    expect(Math.min(...numbers)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...numbers)).toBeLessThan(1);
    const tenths = Array.from(
      { length: 10 },
      (_, tenth) => numbers.filter((one) => Math.floor(one * 10) === tenth).length,
    );
    // Ten thousand even draws leave a tenth within 1000 ± 30 by chance (one standard deviation).
    for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});
