import { describe, expect, it } from 'vitest';
import { readRecord } from '../../../core/record/read.ts';
import { madeWell, madeWells } from './madeWell.ts';
import { depths, drawnFrom, weighed } from './spread.ts';

const wells = [...madeWells(400)];
const texts = wells.map(({ document }) => JSON.stringify(document));

describe('made wells', () => {
  it('are the same at every call, each for itself', () => {
    expect(JSON.stringify(madeWell(7).document)).toBe(texts[7]);
    expect(new Set(texts).size).toBe(400);
  });

  it('are whole records, which a reader takes without a trouble', () => {
    for (const { id, document } of wells) {
      const reading = readRecord(document);
      expect(reading.kind).toBe('ok');
      if (reading.kind !== 'ok') continue;
      expect([id, reading.troubles]).toEqual([reading.record.identity?.id, []]);
    }
  });

  it('are as long as records of real wells', () => {
    const lengths = texts.map(({ length }) => length).sort((a, b) => a - b);
    expect(lengths[200]).toBeGreaterThan(4500);
    expect(lengths[200]).toBeLessThan(8000);
    expect(lengths.at(-1)).toBeLessThan(16_000);
  });

  it('are as deep as the logs that the spread was counted from', () => {
    const reached = wells
      .map(({ document }) => (document as { bore: { depthReached: number } }).bore.depthReached)
      .sort((a, b) => a - b);
    expect(Math.abs(reached[200]! - depths[4])).toBeLessThan(5);
    expect(Math.abs(reached[100]! - depths[2])).toBeLessThan(5);
  });
});

describe('a spread', () => {
  it('goes from its least to its most, straight between', () => {
    expect([0, 0.125, 0.5, 0.999_999].map((at) => drawnFrom(depths, () => at))).toEqual([
      ...[9.1, 21.7, 49.5],
      expect.closeTo(115, 2),
    ]);
  });

  it('gives each value as often as it weighs', () => {
    const weights = { a: 3, b: 1 };
    const given = [0, 0.74, 0.76, 0.99].map((at) => weighed(weights, () => at));
    expect(given.join('')).toBe('aabb');
  });
});
