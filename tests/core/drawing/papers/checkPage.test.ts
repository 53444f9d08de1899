import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import { paperNames, paperOf } from '../../../../core/drawing/paper.ts';
import { drawCheckPage } from '../../../../core/drawing/papers/checkPage.ts';
import { checkPageWordsIn } from '../../../../core/drawing/papers/checkPage/words.ts';
import { paintPdf } from '../../../../core/paint/pdf/paintPdf.ts';
import { readPdf } from '../../../reading/pdf.ts';
import { complaintsAbout } from '../../../reading/tools.ts';
import { extentOf } from '../../../sheets/extent.ts';
import { groupsNamed, placedOn, textsOn } from '../../../sheets/placed.ts';
import { fonts } from '../../paint/sample.ts';

const made = { fonts: fonts.metrics, madeAt: '2025-01-01T00:00:00Z', paperId: '1'.repeat(32) };
const sizes = paperNames;
const kinds = sizes.flatMap((paper) => languages.map((language) => [paper, language] as const));

describe.each(kinds)('the check page on %s in %s', (paper, language) => {
  const drawing = drawCheckPage({ ...made, paper, language });
  const [page] = drawing.pages as [(typeof drawing.pages)[number]];

  it('has one line of 100 mm across and one down, in the PDF too', async () => {
    const pdf = paintPdf(drawing, fonts.files);
    expect(complaintsAbout(pdf)).toBe('');
    const [read] = await readPdf(pdf);
    const lengths = read!.paths.map(({ points }) => {
      const [[x1, y1], [x2, y2]] = [points[0]!, points.at(-1)!];
      return [Math.abs(x2 - x1), Math.abs(y2 - y1)] as const;
    });
    const long = (length: number, other: number) =>
      lengths.filter((one) => Math.abs(one[0] - length) < 0.01 && Math.abs(one[1] - other) < 0.01);
    expect(long(100, 0)).toHaveLength(1);
    expect(long(0, 100)).toHaveLength(1);
  });

  it('has end marks whose outer edges are 100 mm apart', () => {
    for (const [name, from, to] of [
      ['across', 0, 2],
      ['down', 1, 3],
    ] as const) {
      const marks = groupsNamed(page.items, name)
        .flatMap((one) => placedOn({ ...page, items: one.items }))
        .filter(({ item }) => item.kind === 'path' && item.stroke?.width === 0.25)
        .map(({ item }) => extentOf(item))
        .filter((extent) => extent[from] === extent[to]);
      expect(marks).toHaveLength(2);
      const edges = marks[1]![from] - marks[0]![from] + 0.25;
      expect(edges).toBeCloseTo(100, 6);
    }
  });

  it('marks the corners of the frame, 20 mm from the left and 10 mm from the other edges', () => {
    const extents = groupsNamed(page.items, 'corners')[0]!.items.map((item) =>
      extentOf(item as Parameters<typeof extentOf>[0]),
    );
    const { width, height } = paperOf(paper);
    expect(extents).toHaveLength(4);
    expect(Math.min(...extents.map(([left]) => left))).toBe(20);
    expect(Math.max(...extents.map(([, , right]) => right))).toBe(width - 10);
    expect(Math.min(...extents.map(([, top]) => top))).toBe(10);
    expect(Math.max(...extents.map(([, , , bottom]) => bottom))).toBe(height - 10);
  });

  it('says what to measure and what to do, within the frame and with no text over another', () => {
    const texts = textsOn(page);
    const said = texts.map(({ item }) => item.text).join(' ');
    const { measure, mend } = checkPageWordsIn(language);
    for (const sentence of [measure, mend]) expect(said).toContain(sentence.split(' ')[0]);
    expect(said).not.toContain('…');
    const { frame } = paperOf(paper);
    const boxes = texts.map(({ item }) => extentOf(item));
    for (const [at, [left, top, right, bottom]] of boxes.entries()) {
      expect(left).toBeGreaterThan(frame.x);
      expect(right).toBeLessThan(frame.x + frame.width);
      expect(bottom).toBeLessThan(frame.y + frame.height);
      const met = boxes.filter(
        (box, other) =>
          other > at && box[0] < right && left < box[2] && box[1] < bottom && top < box[3],
      );
      expect(met).toEqual([]);
    }
  });

  it('shows hatches and every width of line', () => {
    expect(Object.keys(drawing.hatches)).toHaveLength(6);
    const lines = groupsNamed(page.items, 'pens')[0]!.items.filter(({ kind }) => kind === 'path');
    expect(lines).toHaveLength(6);
  });
});
