import { OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { paintPdf } from '../../../../core/paint/pdf/paintPdf.ts';
import { openPdf } from '../../../reading/pdf.ts';
import { box, dotted, drawing, fonts, page } from '../sample.ts';

const region = (x: number, hatch = 'dotted') =>
  ({ kind: 'region', segments: box(x, 20, 30, 30), hatch }) as const;
const regions = [region(20), region(60)];
const pointsPerMm = 72 / 25.4;

interface Tile {
  matrix: number[];
  step: number[];
}

/** How pdfjs gives a tiling: among its parts, the fifth from the end on are matrix and steps. */
async function tilesOf(pdf: Uint8Array, number: number): Promise<Tile[]> {
  const file = await openPdf(pdf);
  const { fnArray, argsArray } = await (await file.getPage(number)).getOperatorList();
  return fnArray.flatMap((operator, at) => {
    if (operator !== OPS.setFillColorN) return [];
    const parts = argsArray[at] as unknown[];
    return [{ matrix: Array.from(parts[3] as number[]), step: parts.slice(5, 7) as number[] }];
  });
}

describe('a hatch in a PDF', () => {
  it('starts at the top left corner of the page, whatever its height', async () => {
    const pdf = paintPdf(drawing([page(regions), page(regions, 420, 148)]), fonts.files);
    for (const [number, height] of [
      [1, 297],
      [2, 148],
    ] as const)
      for (const { matrix, step } of await tilesOf(pdf, number)) {
        const expected = [pointsPerMm, 0, 0, -pointsPerMm, 0, height * pointsPerMm];
        expected.forEach((value, at) => expect(matrix[at]).toBeCloseTo(value, 3));
        expect(step).toEqual([dotted.width, dotted.height]);
      }
  });

  it('is held once for all pages of one height', () => {
    const patterns = (pages: Parameters<typeof drawing>[0]) =>
      Buffer.from(paintPdf(drawing(pages), fonts.files))
        .toString('latin1')
        .split('/PatternType 1').length - 1;
    expect(patterns([page(regions), page(regions)])).toBe(1);
    expect(patterns([page(regions), page(regions, 297, 210), page(regions)])).toBe(2);
  });

  it('is refused when the drawing has none of that name', () => {
    const lost = drawing([page([region(20, 'lost')])]);
    expect(() => paintPdf(lost, fonts.files)).toThrow('no hatch called lost');
  });
});
