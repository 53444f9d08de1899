import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Program } from './program.ts';

/** What tests reach for in an open well folder. */
export const field = (page: Page, path: string) => page.locator(`[data-field="${path}"]`);
export const saving = (page: Page) => page.locator('[data-saving]');

/** Waits for the page as long as a busy machine may need. */
export const eventually = <T>(read: () => T | Promise<T>) => expect.poll(read, { timeout: 15_000 });

/** A new window with a well open in it and its sheet drawn. */
export async function openWell(program: Program, number: string, width?: number, height?: number) {
  const page = await program.newPage(width, height);
  await page.getByRole('button', { name: number }).click();
  await page.locator('#sheet text').first().waitFor();
  return page;
}

/** Waits until all that was typed is shown as on disk. */
export const kept = (page: Page) => page.locator('[data-saving="kept"]').waitFor();

/** The desk of a well as it is on disk now. */
export async function storedDesk({ service }: Pick<Program, 'service'>, number: string) {
  const list = await service.call('wells.list', { search: number });
  const [row] = list.ok ? list.value : [];
  if (!row) throw new Error(`The archive has no well ${number}`);
  const desk = await service.call('wells.desk', { id: row.id });
  if (!desk.ok) throw new Error(desk.error.sentence);
  return desk.value;
}

/** The log as it is on disk now. */
export async function storedLog(program: Program, number: string) {
  return (await storedDesk(program, number)).desk.record.log ?? [];
}
