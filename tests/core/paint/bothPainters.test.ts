import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../core/drawing/items.ts';
import { paintPdf } from '../../../core/paint/pdf/paintPdf.ts';
import { paintSvg } from '../../../core/paint/svg/write.ts';
import { spanOf } from '../../reading/page.ts';
import { readPdf } from '../../reading/pdf.ts';
import { samePlaces } from '../../reading/samePlaces.ts';
import { readSvg } from '../../reading/svg.ts';
import { drawing, everyKind, fonts, line, page, text, trial } from './sample.ts';

async function differences(one: Drawing, other = one): Promise<string[]> {
  const pages = await readPdf(paintPdf(one, fonts.files));
  return pages.flatMap((pdf, at) => samePlaces(pdf, readSvg(paintSvg(other, at))));
}

describe('the same drawing painted for screen and paper', () => {
  it('has the same texts and lines at the same places, on pages of any size', async () => {
    expect(await differences(trial)).toEqual([]);
  });

  it('keeps a line of 100 mm at 100 mm within a hundredth', async () => {
    const lines = drawing([page([line(20, 20, 120, 20), line(30.123, 40, 30.123, 140)])]);
    const [pdf] = await readPdf(paintPdf(lines, fonts.files));
    const svg = readSvg(paintSvg(lines, 0));
    for (const path of [...pdf!.paths, ...svg.paths])
      expect(Math.abs(spanOf(path) - 100)).toBeLessThan(0.01);
  });

  it('puts control characters and halves of letters as blanks in both', async () => {
    const odd = text('a\tb\nc\u0007d\ud800e\u2028f', 20, 20);
    expect(await differences(drawing([page([odd])]))).toEqual([]);
    const [pdf] = await readPdf(paintPdf(drawing([page([odd])]), fonts.files));
    expect(pdf!.texts[0]!.text).toBe('a b c d e f');
  });

  it('shows a box in both for a letter that the PDF fonts cannot number', async () => {
    const one = drawing([page([text('x\u{1f12f}y', 20, 20)])]);
    expect(readSvg(paintSvg(one, 0)).texts[0]!.text).toBe('x□y');
    expect(await differences(one)).toEqual([]);
  });
});

describe('the comparison of places', () => {
  const bare = drawing([page(everyKind.filter(({ kind }) => kind !== 'link'))]);

  it('names a text that moved by a tenth of a millimetre', async () => {
    const moved = everyKind.map((item) =>
      item.kind === 'text' && item.turn === 90 ? { ...item, x: item.x + 0.1 } : item,
    );
    expect((await differences(bare, drawing([page(moved)]))).join()).toMatch(/“down” stands at/);
  });

  it('names what only one of the two has', async () => {
    const without = everyKind.filter((item) => item.kind !== 'region');
    expect((await differences(bare, drawing([page(without)]))).join()).toMatch(/only one has path/);
    expect(await differences(bare, drawing([page(everyKind, 211)]))).toEqual([
      expect.stringMatching(/^the page is 21/),
    ]);
  });
});
