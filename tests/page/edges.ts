import type { Page } from 'playwright-core';
import { storedDesk } from './desk.ts';
import type { Program } from './program.ts';

/** What tests do with the edges of the drawing. */
export const edge = (page: Page, id: string) => page.locator(`[data-edge="${id}"]`);

/** The depth that an edge says it stands at, metres below ground. */
export async function depthOf(page: Page, id: string): Promise<number> {
  return Number(await edge(page, id).getAttribute('aria-valuenow'));
}

/** Where an edge can be pressed: the middle of its last zone, pixels. */
export async function gripOf(page: Page, id: string) {
  const line = (await edge(page, id).locator('line').last().boundingBox())!;
  return { x: line.x + line.width / 2, y: line.y + line.height / 2 };
}

/** Pixels for a metre of depth, from where two edges of the log are drawn. */
export async function pixelsPerMetre(page: Page): Promise<number> {
  const ids = await page
    .locator('[data-edge^="log["]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('data-edge')!));
  const [first, last] = [ids[0]!, ids.at(-1)!];
  const [a, b] = [await gripOf(page, first), await gripOf(page, last)];
  return (b.y - a.y) / ((await depthOf(page, last)) - (await depthOf(page, first)));
}

/** Presses an edge and moves it by metres; the button is still down. */
export async function carry(page: Page, id: string, byM: number) {
  const [{ x, y }, perM] = [await gripOf(page, id), await pixelsPerMetre(page)];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 4, y + (byM * perM) / 2);
  await page.mouse.move(x + 4, y + byM * perM);
  await page.locator('.hand.held').waitFor();
}

/** Drags an edge by metres, with a key held where one is named. */
export async function drag(page: Page, id: string, byM: number, key?: string) {
  if (key !== undefined) await page.keyboard.down(key);
  await carry(page, id, byM);
  await page.mouse.up();
  if (key !== undefined) await page.keyboard.up(key);
  await page.locator('.hand.held').waitFor({ state: 'detached' });
}

/** The record as it is on disk now. */
export async function storedRecord(program: Program, number: string) {
  return (await storedDesk(program, number)).desk.record;
}
