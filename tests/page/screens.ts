/**
 * `npm run make:screens`: pictures of the page in docs/screens, made from the demo wells: the
 * archive's views and every chapter, in both contrasts and two sizes of window. They are looked at by
 * people and compared by nobody. Needs Chromium, and ImageMagick to make the files small.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { views } from '../../renderer/archive/views.ts';
import { chapterIds } from '../../renderer/editors/chapter.ts';
import { startProgram } from './program.ts';

const folder = path.resolve(import.meta.dirname, '../../docs/screens');
const number = 'KV-25-011';
const windows = [
  { width: 1024, height: 768 },
  { width: 1600, height: 1000 },
];

/** Flat colours lose nothing that an eye would miss in 64 shades. */
async function take(page: Page, name: string) {
  const file = path.join(folder, `${name}.png`);
  await page.screenshot({ path: file, animations: 'disabled' });
  execFileSync('convert', [file, '-strip', '+dither', '-colors', '64', `PNG8:${file}`]);
}

async function takeAll(page: Page, name: (of: string) => string) {
  await page.getByRole('button', { name: number }).waitFor();
  await take(page, name('archive'));
  const bar = page.getByRole('navigation').getByRole('button');
  for (const [at, view] of views.entries()) {
    if (view === 'wells') continue;
    await bar.nth(at).click();
    await page.waitForTimeout(300);
    await take(page, name(view));
  }
  await bar.nth(views.indexOf('wells')).click();
  await page.getByRole('button', { name: number }).click();
  await page.locator('#sheet text').first().waitFor();
  for (const chapter of chapterIds) {
    await page.locator(`#tab-${chapter}`).click();
    await page.waitForTimeout(300);
    await take(page, name(chapter));
  }
}

mkdirSync(folder, { recursive: true });
const program = await startProgram();
try {
  for (const contrast of ['system', 'high'] as const)
    for (const { width, height } of windows) {
      await program.service.call('settings.write', { contrast, language: 'en' });
      const page = await program.newPage(width, height);
      const look = contrast === 'high' ? 'high-contrast' : 'light';
      await takeAll(page, (of) => `${of}-${look}-${width}`);
      await page.context().close();
    }
} finally {
  await program.close();
}
if (program.complaints.length > 0) throw new Error(program.complaints.join('\n'));
