import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { axeFaults } from './axeFaults.ts';
import { demoRecords, startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

beforeAll(async () => {
  program = await startProgram(demoRecords());
}, patience);
afterEach(async () => {
  await page.context().close();
  expect(program.complaints).toEqual([]);
}, patience);
afterAll(() => program.close(), patience);

/** The name of the file that was handed over, which the page says too. */
async function write(format: string): Promise<string> {
  await page.getByRole('dialog').getByRole('combobox').selectOption(format);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Write', exact: true }).click();
  const file = await coming;
  const said = page.getByText('was written');
  await said.waitFor();
  expect(readFileSync(await file.path()).length).toBeGreaterThan(100);
  expect(await said.innerText()).toContain(file.suggestedFilename());
  return file.suggestedFilename();
}

describe('writing wells to a file', () => {
  it('hands over those of the list, and tells what the format does not hold', async () => {
    page = await program.newPage();
    await page.getByRole('searchbox').fill('KV');
    await page.getByRole('button', { name: 'Write to a file' }).click();
    expect(await write('ags')).toMatch(/\.zip$/);
    await page.getByRole('cell', { name: 'AGS 4 has no place for it.' }).first().waitFor();
    expect(await axeFaults(page)).toEqual([]);
    expect(await write('jsonl')).toMatch(/\.jsonl$/);
    await page.getByText('The format holds everything.').waitFor();
    await page.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  });
});
