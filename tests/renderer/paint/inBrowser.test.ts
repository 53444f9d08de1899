import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Drawing } from '../../../core/drawing/items.ts';
import { paintPdf } from '../../../core/paint/pdf/paintPdf.ts';
import { base64 } from '../../../core/paint/svg/base64.ts';
import { fontFaces } from '../../../core/paint/svg/fontFaces.ts';
import { openBrowser, pictureOf } from '../../reading/tools.ts';
import { box, drawing, fonts, page as sheet, text, trial } from '../../core/paint/sample.ts';
import type { painters as Painters } from './browserEntry.ts';

declare const painters: typeof Painters;

/** 10 dots a millimetre, on screen and from poppler. */
const dotsPerMm = 10;

/** The painters as one script. Parts of jsPDF that no drawing needs stay out. */
async function bundle(): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      lib: {
        entry: path.join(import.meta.dirname, 'browserEntry.ts'),
        formats: ['es'],
        fileName: 'painters',
      },
      rolldownOptions: { external: ['canvg', 'html2canvas', 'dompurify'] },
    },
  });
  const [{ output }] = [result].flat() as unknown as [{ output: { code?: string }[] }];
  return output[0]!.code!;
}

let browser: Browser;
let page: Page;

beforeAll(async () => {
  const script = bundle();
  browser = await openBrowser();
  page = await browser.newPage({ viewport: { width: 1000, height: 1000 } });
  await page.setContent('<!doctype html><body style="margin:0"><svg id="sheet"></svg>');
  await page.addStyleTag({ content: fontFaces(fonts.files) });
  await page.addScriptTag({ type: 'module', content: await script });
  await page.waitForFunction(() => 'painters' in globalThis);
}, 60_000);
afterAll(() => browser.close());

async function show(one: Drawing): Promise<void> {
  await page.evaluate(
    async ({ one, dotsPerMm }) => {
      const svg = document.querySelector<SVGSVGElement>('#sheet')!;
      svg.style.display = 'block';
      svg.style.width = `${one.pages[0]!.width * dotsPerMm}px`;
      painters.paintPage(svg, one, 0);
      await document.fonts.ready;
    },
    { one, dotsPerMm },
  );
}

/** Middle and number of the dark dots of a PNG picture; its own browser decodes it. */
function inkOf(png: Uint8Array): Promise<{ x: number; y: number; dots: number }> {
  return page.evaluate(
    async (address) => {
      const image = await createImageBitmap(await (await fetch(address)).blob());
      const context = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, image.width, image.height);
      let [x, y, dots] = [0, 0, 0];
      for (let at = 0; at < data.length; at += 4) {
        const dark = 1 - data[at]! / 255;
        const dot = at / 4;
        x += dark * (dot % image.width);
        y += dark * Math.floor(dot / image.width);
        dots += dark;
      }
      return { x: x / dots, y: y / dots, dots };
    },
    `data:image/png;base64,${base64(png)}`,
  );
}

async function bothInks(one: Drawing) {
  await show(one);
  const { width, height } = one.pages[0]!;
  const clip = { x: 0, y: 0, width: width * dotsPerMm, height: height * dotsPerMm };
  const screen = await inkOf(await page.screenshot({ clip }));
  const paper = await inkOf(pictureOf(paintPdf(one, fonts.files), dotsPerMm * 25.4));
  return { screen, paper };
}

/** Dots between two middles. Both painters round clips and edges to whole dots. */
function apart(one: { x: number; y: number }, other: { x: number; y: number }): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}

describe('in a browser', () => {
  it('a PDF has the very bytes that it has outside', async () => {
    const files = Object.fromEntries(
      Object.entries(fonts.files).map(([face, bytes]) => [face, base64(bytes)]),
    );
    const made = await page.evaluate(
      ({ trial, files }) => {
        const bytesOf = (face: string) =>
          Uint8Array.from(atob(files[face]!), (letter) => letter.charCodeAt(0));
        const pdf = painters.paintPdf(trial, {
          regular: bytesOf('regular'),
          bold: bytesOf('bold'),
          fallback: bytesOf('fallback'),
        });
        return Array.from(pdf, (byte) => String.fromCharCode(byte)).join('');
      },
      { trial, files },
    );
    expect(Buffer.compare(Buffer.from(made, 'latin1'), paintPdf(trial, fonts.files))).toBe(0);
  });

  it('text is as wide by nature as it was measured', async () => {
    await show(trial);
    const widths = await page.evaluate(() =>
      [...document.querySelectorAll<SVGTextElement>('#sheet text')].map((element) => {
        const measured = element.getAttribute('textLength')!;
        element.removeAttribute('textLength');
        return [Number(measured), element.getComputedTextLength()] as const;
      }),
    );
    expect(widths).toHaveLength(6);
    for (const [measured, natural] of widths) expect(natural).toBeCloseTo(measured, 1);
  });

  it('a hatch has its dots where the PDF has them', async () => {
    const region = { kind: 'region', hatch: 'dotted' } as const;
    const one = drawing([sheet([{ ...region, segments: box(10.3, 12.4, 20, 20) }], 60, 45.5)]);
    const { screen, paper } = await bothInks(one);
    expect(screen.dots).toBeGreaterThan(300);
    expect(Math.abs(screen.dots - paper.dots) / paper.dots).toBeLessThan(0.05);
    expect(apart(screen, paper)).toBeLessThan(1);
  });

  it('turned and clipped text has its ink where the PDF has it', async () => {
    const clip = { x: 5, y: 5, width: 20, height: 20 };
    const turned = text('Depth to water', 8, 8, { turn: 50, face: 'bold', em: 6 });
    const one = drawing([sheet([{ kind: 'group', clip, items: [turned] }], 60, 40)]);
    const { screen, paper } = await bothInks(one);
    expect(screen.dots).toBeGreaterThan(300);
    expect(apart(screen, paper)).toBeLessThan(1);
  });
});
