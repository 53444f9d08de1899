import { describe, expect, it } from 'vitest';
import { extentOf, spanOf, type ReadPage } from '../reading/page.ts';
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

interface Tick {
  readonly depthM: number;
  readonly y: number;
}

/** Depths of the ruler with their heights, as pdfjs sees figures and the long ticks beside them. */
function ticksOn({ texts, paths }: ReadPage): Tick[] {
  const long = paths.filter((path) => path.stroked && Math.abs(spanOf(path) - 3) < 0.01);
  const level = long.map(extentOf).filter(([, top, right, foot]) => top === foot && right < 30);
  return texts.flatMap(({ text, x, y }) => {
    const tick = level.find(
      ([left, at]) => x < left && left - x < 6 && Math.abs(y - 0.9 - at) < 0.05,
    );
    return tick && /^[\d.]+$/.test(text) ? [{ depthM: Number(text), y: tick[1] }] : [];
  });
}

function statedScale({ texts }: ReadPage): number | undefined {
  const says = texts.map(({ text }) => /^depths 1:(\d+)$/.exec(text)?.[1]);
  const found = says.find((one) => one !== undefined);
  return found === undefined ? undefined : Number(found);
}

/** Millimetres to a metre between the outermost figures of a page's ruler. */
function mmPerMetre(page: ReadPage): number {
  const ticks = ticksOn(page).sort((a, b) => a.depthM - b.depthM);
  const [first, last] = [ticks[0]!, ticks.at(-1)!];
  return (last.y - first.y) / (last.depthM - first.depthM);
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
    for (const page of drawn) {
      const ticks = ticksOn(page);
      const length = Math.abs(ticks.at(-1)!.y - ticks[0]!.y);
      const meant = 1000 / statedScale(page)!;
      // 0.05 mm over the whole length of the ruler.
      expect(Math.abs(mmPerMetre(page) / meant - 1) * length).toBeLessThan(0.05);
    }
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
