import { chromium } from 'playwright-core';
import type { Drawing } from '../../../core/drawing/items.ts';
import { fontFaces } from '../../../core/paint/svg/fontFaces.ts';
import { paintSvg } from '../../../core/paint/svg/write.ts';
import type { ShippedFonts } from '../../../electron/files/fonts.ts';

/**
 * Milliseconds and bytes of drawings printed by headless Chromium from SVG; its start and the writing
 * of the SVG are left out.
 */
export async function withChromium(drawings: readonly Drawing[], fonts: ShippedFonts) {
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox'],
  });
  try {
    const page = await browser.newPage();
    const sheets = drawings.flatMap((drawing) =>
      drawing.pages.map((_, at) => paintSvg(drawing, at).replace(/^<\?xml[^>]*>/, '')),
    );
    const style = `@page { size: A4; margin: 0 } svg { display: block; break-after: page }`;
    const html = `<style>${fontFaces(fonts.files)} ${style} body { margin: 0 }</style>${sheets.join('')}`;
    const start = performance.now();
    await page.setContent(html, { timeout: 0 });
    const pdf = await page.pdf({ preferCSSPageSize: true });
    return { ms: performance.now() - start, bytes: pdf.length };
  } finally {
    await browser.close();
  }
}
