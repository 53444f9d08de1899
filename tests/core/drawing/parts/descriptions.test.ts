import { describe, expect, it } from 'vitest';
import {
  descriptionsFit,
  drawDescriptions,
  shortenedStrata,
} from '../../../../core/drawing/parts/descriptions.ts';
import { wordsRoom } from '../../../../core/drawing/parts/columns.ts';
import { yAt } from '../../../../core/drawing/scale.ts';
import { kit, pathsOf, pointsOf, stratum, textsOf, viewOf, wordsOf } from '../sample.ts';

const view = viewOf();
const wordy = (from: number, to: number) =>
  stratum(from, to, {
    words: 'Beds of sand and of silt in turn, each some centimetres thick. '.repeat(2),
  });
const many = Array.from({ length: 30 }, (_, at) => wordy(at, at + 1));

describe('descriptions', () => {
  it('are tied to the middle of what the page shows of their stratum', () => {
    const lower = viewOf({ fromM: 10, toM: 40, first: false });
    const [tie] = pathsOf(drawDescriptions(kit, [stratum(0, 20, { material: 'sand' })], lower));
    expect(pointsOf(tie!)[0]).toEqual([lower.columns.description.x, yAt(lower.axis, 15)]);
  });

  it('stand on the pages that show their stratum, and on no other', () => {
    const strata = [stratum(0, 5, { material: 'clay' }), stratum(5, 30, { material: 'sand' })];
    const lower = viewOf({ fromM: 10, toM: 30, first: false });
    expect(wordsOf(drawDescriptions(kit, strata, lower))).toEqual(['SAND']);
  });

  it('fit when they are few, and are whole then', () => {
    const few = many.slice(0, 5);
    expect(descriptionsFit(kit, few, view)).toBe(true);
    expect(shortenedStrata(kit, few, view)).toEqual([]);
  });

  it('are shortened with an ellipsis when they are too many, and named for the notes', () => {
    expect(descriptionsFit(kit, many, view)).toBe(false);
    expect(shortenedStrata(kit, many, view)).toEqual(many);
    const words = wordsOf(drawDescriptions(kit, many, view));
    expect(words.filter((one) => one.endsWith('…'))).toHaveLength(many.length);
  });

  it('stay within the body', () => {
    const { top, foot } = wordsRoom(view);
    for (const { y } of textsOf(drawDescriptions(kit, many, view))) {
      expect(y).toBeGreaterThan(top);
      expect(y).toBeLessThan(foot);
    }
  });
});
