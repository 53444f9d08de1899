import { describe, expect, it } from 'vitest';
import { extentOf, spanOf } from '../reading/page.ts';
import { offScale, statedScale, stretchesOn, ticksOn } from '../reading/ruler.ts';
import { samePlaces } from '../reading/samePlaces.ts';
import { complaintsAbout, fontsOf } from '../reading/tools.ts';
import { examples } from './examples/index.ts';
import { paintSheet, type PaintedSheet } from './painted.ts';
import { demoWells, publishedWells, type NamedWell } from './wells.ts';

/** Every seventh published well: some of each publisher. */
const published = publishedWells.filter((_, at) => at % 7 === 0);

const awkward: readonly NamedWell[] = ['dugAndDrilled', 'strangeLetters', 'longNames'].map(
  (name) => [name, examples[name]!()],
);

const wells = [...demoWells, ...published, ...awkward];

/** Painted once for all that is asked of it. */
const painted = new Map<string, Promise<PaintedSheet>>();

function sheetOf([name, record]: NamedWell): Promise<PaintedSheet> {
  const found = painted.get(name) ?? paintSheet(record, 'A4');
  painted.set(name, found);
  return found;
}

// The independent readers: pdfjs for the PDF, jsdom for the SVG, qpdf and poppler for soundness.
describe.each(wells)('the sheet of %s', (...well) => {
  it('has the same texts and lines at the same places in PDF and SVG', async () => {
    const { pdf, svg } = await sheetOf(well);
    expect(pdf).toHaveLength(svg.length);
    expect(pdf.flatMap((page, at) => samePlaces(page, svg[at]!, 0.05))).toEqual([]);
  });

  it('is true to its stated scale in the PDF, by its own ruler', async () => {
    const { pdf } = await sheetOf(well);
    const drawn = pdf.filter((page) => statedScale(page) !== undefined);
    expect(drawn.length).toBeGreaterThan(0);
    for (const page of drawn)
      for (const ticks of stretchesOn(page))
        expect(offScale(ticks, statedScale(page)!)).toBeLessThan(0.05);
  });

  it('has a check line of 100 mm in the PDF', async () => {
    const { pdf } = await sheetOf(well);
    for (const page of pdf.filter((one) => statedScale(one) !== undefined)) {
      const check = page.texts.find(({ text }) => text.startsWith('100 mm:'))!;
      const over = page.paths.filter((path) => {
        const [left, top, , foot] = extentOf(path);
        return top === foot && Math.abs(left - check.x) < 0.01 && Math.abs(top - check.y) < 6;
      });
      expect(over.map((path) => spanOf(path).toFixed(2))).toContain('100.00');
    }
  });

  it('is a sound PDF, its fonts embedded and its letters readable as text', async () => {
    const { file } = await sheetOf(well);
    expect(complaintsAbout(file)).toBe('');
    const fonts = fontsOf(file);
    expect(fonts.length).toBeGreaterThan(0);
    expect(fonts.filter(({ embedded, unicode }) => !embedded || !unicode)).toEqual([]);
  });
});

it('one metre at 1:100 measures 10.00 mm in the PDF as pdfjs sees it', async () => {
  const shallow = demoWells.find(([name]) => name.startsWith('shallow'))!;
  const [page] = (await sheetOf(shallow)).pdf;
  expect(statedScale(page!)).toBe(100);
  const ys = ticksOn(page!).map(({ y }) => y);
  for (const [at, y] of ys.slice(1).entries())
    expect(Math.abs(y - ys[at]! - 10)).toBeLessThan(0.05);
});

it('an A3 sheet has the same texts and lines at the same places in PDF and SVG', async () => {
  const { pdf, svg } = await paintSheet(demoWells[2]![1], 'A3');
  expect(pdf.flatMap((page, at) => samePlaces(page, svg[at]!, 0.05))).toEqual([]);
});

it.each(['fr', 'pt'] as const)(
  'a sheet in %s reads the same as PDF and SVG, and is sound',
  async (language) => {
    const { pdf, svg, file } = await paintSheet(demoWells[2]![1], 'A4', language);
    expect(pdf.flatMap((page, at) => samePlaces(page, svg[at]!, 0.05))).toEqual([]);
    expect(complaintsAbout(file)).toBe('');
    const words = pdf.flatMap(({ texts }) => texts.map(({ text }) => text));
    expect(words).toContain({ fr: 'Légende', pt: 'Legenda' }[language]);
    // The language that a screen reader is to speak (ISO 32000-1, 14.9.2).
    expect(Buffer.from(file).toString('latin1')).toContain(`/Lang (${language})`);
  },
);
