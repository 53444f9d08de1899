import { afterAll, beforeAll, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { openWell } from './desk.ts';
import { startProgram, type Program } from './program.ts';
import { textFaults } from './textFaults.ts';

let program: Program;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

beforeAll(async () => {
  program = await startProgram();
}, patience);
afterAll(() => program.close(), patience);

it('gives the page in sight as a drawing file by the keyboard, and the list fits a small window', async () => {
  const page = await openWell(program, 'KV-25-011', 1024, 768);
  await page.getByRole('button', { name: 'More', exact: true }).focus();
  await page.keyboard.press('Enter');
  expect(await page.evaluate(textFaults)).toEqual([]);
  await page.keyboard.press('ArrowDown');
  const [file] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
  expect(file.suggestedFilename()).toMatch(/-1\.svg$/);
  await page.getByText(`${file.suggestedFilename()} was made.`).waitFor();
  expect(await page.evaluate(textFaults)).toEqual([]);
  expect(program.complaints).toEqual([]);
  await page.context().close();
});

it('prints from a tab where the browser shows the PDF, or from its downloads where it opens none', async () => {
  const page = await openWell(program, 'KV-25-011', 1024, 768);
  const print = async () => {
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('button', { name: 'Print', exact: true }).click();
  };
  const [tab] = await Promise.all([page.context().waitForEvent('page'), print()]);
  expect(new URL(tab.url()).pathname).toMatch(/^\/made\/[0-9a-f]{64}$/);
  await page.getByText(/is open in a new tab.* at actual size, 100 %/).waitFor();
  await tab.close();
  await page.evaluate(() => {
    window.open = () => null;
  });
  const [file] = await Promise.all([page.waitForEvent('download'), print()]);
  await page.getByText(`${file.suggestedFilename()} was made. Print the PDF at actual`).waitFor();
  expect(await page.evaluate(textFaults)).toEqual([]);
  expect(program.complaints).toEqual([]);
  await page.context().close();
});

it.each(languages)(
  'the lists that open from the sheet’s bar stand whole in a small window, in %s',
  async (language) => {
    await program.service.call('settings.write', { language });
    const page = await openWell(program, 'KV-25-011', 1024, 768);
    const pane = (await page.locator('.sheet [role=toolbar]').boundingBox())!;
    const openers = page.locator('.sheet [role=toolbar] [aria-expanded]');
    expect(await openers.count()).toBe(2);
    for (let at = 0; at < 2; at += 1) {
      await openers.nth(at).click();
      const list = page.locator(`[id="${await openers.nth(at).getAttribute('aria-controls')}"]`);
      const box = (await list.boundingBox())!;
      expect(box.x).toBeGreaterThanOrEqual(pane.x);
      expect(box.x + box.width).toBeLessThanOrEqual(pane.x + pane.width);
      expect(box.y + box.height).toBeLessThanOrEqual(768);
      expect(await page.evaluate(textFaults)).toEqual([]);
      await page.keyboard.press('Escape');
    }
    await page.context().close();
  },
  patience,
);
