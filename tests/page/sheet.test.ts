import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { eventually, field, openWell } from './desk.ts';
import { startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

beforeAll(async () => {
  program = await startProgram();
}, patience);
afterEach(async () => {
  await page.context().close();
  expect(program.complaints).toEqual([]);
}, patience);
afterAll(() => program.close(), patience);

describe('the sheet', () => {
  it('leads from a part of the drawing to its row', async () => {
    page = await openWell(program, 'KV-25-011');
    await page.getByRole('tab', { name: 'Site' }).click();
    await page
      .locator('#sheet text[data-path^="log[4]"], #sheet [data-path^="log[4]"] text')
      .first()
      .click();
    const row = page.locator('tr[aria-current="true"]');
    await eventually(() => row.getAttribute('data-row')).toBe('4');
    expect(await page.locator('#sheet .marked').count()).toBeGreaterThan(0);
  });

  it('marks the part whose row is chosen, on the page where it stands', async () => {
    page = await openWell(program, 'KV-26-004');
    await field(page, 'log[30].to').focus();
    await page.getByText(/Page [2-9] of/).waitFor({ state: 'attached' });
    await eventually(() => page.locator('#sheet .marked').count()).toBeGreaterThan(0);
  });

  it('zooms and pans by buttons, wheel and keys, and fits again', async () => {
    page = await openWell(program, 'KV-25-011');
    const wide = async () => (await page.locator('.paper').boundingBox())!;
    const first = await wide();
    await page.getByRole('button', { name: 'Zoom in' }).click();
    await eventually(async () => (await wide()).width).toBeGreaterThan(first.width * 1.2);
    await page.locator('.board').hover();
    const zoomed = await wide();
    await page.mouse.wheel(0, -200);
    await eventually(async () => (await wide()).width).toBeGreaterThan(zoomed.width * 1.1);
    await page.locator('.sight').focus();
    const still = await wide();
    await page.keyboard.press('ArrowRight');
    await eventually(async () => (await wide()).x).toBeLessThan(still.x - 20);
    await page.keyboard.press('0');
    await eventually(async () => Math.round((await wide()).width)).toBe(Math.round(first.width));
  });

  it('turns its pages', async () => {
    page = await openWell(program, 'KV-25-011');
    const first = await page.locator('#sheet').innerHTML();
    await page.getByRole('button', { name: 'Next page' }).click();
    await page.getByText('Page 2 of').waitFor({ state: 'attached' });
    expect(await page.locator('#sheet').innerHTML()).not.toBe(first);
  });

  it('is drawn with the shipped faces', async () => {
    page = await openWell(program, 'KV-25-011');
    const loaded = await page.evaluate(() =>
      [...document.fonts].filter(({ status }) => status === 'loaded').map(({ family }) => family),
    );
    expect(loaded).toEqual(expect.arrayContaining(['borefolio-regular', 'borefolio-bold']));
  });

  it.each(['A4', 'A3', 'layingOut', 'committee'])('is exported as PDF on %s', async (size) => {
    page = await openWell(program, 'KV-25-011');
    await page.getByLabel('Paper').selectOption(size);
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Export PDF' }).click(),
    ]);
    const bytes = readFileSync(await file.path());
    expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect(file.suggestedFilename()).toMatch(/\.pdf$/);
    await page.getByText(`${file.suggestedFilename()} was made.`).waitFor();
  });
});

describe('the page', () => {
  it.each([
    [1024, 768],
    [1600, 1000],
  ])('needs no sideways scroll at %i by %i', async (width, height) => {
    page = await openWell(program, 'KV-26-004', width, height);
    for (const name of ['Well', 'Site', 'Ground', 'Completion', 'Water', 'Pump', 'Handover']) {
      await page.getByRole('tab', { name, exact: true }).click();
      const over = await page.evaluate(() => {
        const { scrollWidth, clientWidth } = document.documentElement;
        const chapter = document.getElementById('chapter')!;
        return [scrollWidth - clientWidth, chapter.scrollWidth - chapter.clientWidth];
      });
      expect({ name, over }).toEqual({ name, over: [0, 0] });
    }
  });

  it('gives every control a name', async () => {
    page = await openWell(program, 'KV-26-004');
    for (const name of ['Well', 'Ground', 'Completion', 'Water']) {
      await page.getByRole('tab', { name, exact: true }).click();
      const nameless = await page.evaluate(
        () =>
          [
            ...document.querySelectorAll<HTMLInputElement>('input, select, textarea, button'),
          ].filter(
            (one) =>
              !one.getAttribute('aria-label') && !one.labels?.length && !one.textContent?.trim(),
          ).length,
      );
      expect(nameless).toBe(0);
    }
  });
});
