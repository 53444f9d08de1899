import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../core/base/random.ts';
import { boxOf, isFit, writeBox } from '../../../../electron/seal/pdf/box.ts';
import { pagesOf, readDocument } from '../../../../electron/seal/pdf/document.ts';
import type { SealBox } from '../../../../electron/seal/seal.ts';
import { paper } from '../sealed.ts';

const document = readDocument(paper());
const page = pagesOf(document)[0]!;

/** The box of a rectangle as it is written in a file. */
function readBack(rectangle: string): SealBox {
  const text = document.text + rectangle;
  const span = { start: document.text.length, end: text.length };
  return boxOf({ ...document, text }, page, span);
}

/** Boxes anywhere on the page, and those at its edges and at the largest size. */
function boxes(): SealBox[] {
  const random = seededRandom(7);
  const anywhere = Array.from({ length: 500 }, () => {
    const [width, height] = [1 + 119 * random(), 1 + 59 * random()];
    return { page: 1, x: (210 - width) * random(), y: (297 - height) * random(), width, height };
  });
  const largest = { page: 1, width: 120, height: 60 };
  const corners = [0, 90].flatMap((x) => [0, 237].map((y) => ({ ...largest, x, y })));
  return [...anywhere, ...corners];
}

describe('a seal’s box', () => {
  it('is the same, to the letter, written again from what was read', () => {
    for (const box of boxes()) {
      const written = writeBox(document, page, box);
      const read = readBack(written.rectangle);
      expect(writeBox(document, page, read)).toEqual(written);
      expect(isFit(document, read)).toBe(true);
      for (const side of ['x', 'y', 'width', 'height'] as const)
        expect(Math.abs(read[side] - box[side])).toBeLessThan(0.001);
    }
  });

  it('fits on its page alone, and no larger than a seal may be', () => {
    const good = { page: 1, x: 10, y: 10, width: 40, height: 20 };
    expect(isFit(document, good)).toBe(true);
    const bad: Partial<SealBox>[] = [
      { page: 0 },
      { page: 99 },
      { x: -1 },
      { x: 171 },
      { y: 278 },
      { width: 0 },
      { height: -5 },
      { width: 121 },
      { height: 61 },
      { x: Number.NaN },
    ];
    for (const change of bad) expect(isFit(document, { ...good, ...change })).toBe(false);
  });
});
