import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bindersBeside } from '../../electron/binder/bindingDesk.ts';
import { axeFaults } from './axeFaults.ts';
import { eventually } from './desk.ts';
import { demoRecords, startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page, or making a binder, may take on a busy machine. */
const patience = 180_000;

beforeAll(async () => {
  program = await startProgram(demoRecords().slice(0, 2));
  page = await program.newPage();
}, patience);
afterAll(() => program.close(), patience);

const button = (name: string | RegExp) => page.getByRole('button', { name });

it(
  'a binder is kept under a name, made, and its volume saved',
  async () => {
    await button('Binders').click();
    await page.getByText('No binder is kept yet.').waitFor();
    expect(await button('Keep and make').isDisabled()).toBe(true);
    await page.getByLabel('Name', { exact: true }).fill('Yearly');
    await page.getByLabel('Committee sheet', { exact: true }).check();
    await page.getByLabel(/Copy the issued PDFs as they are/).check();
    await page.getByLabel('Most pages of a volume').fill('3');
    await page.getByText('A whole number from 10 to 1000.').waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByLabel('Most pages of a volume').fill('250');
    await button('Keep and make').click();
    await page.getByText(/^Yearly: 2 wells on \d+ pages\.$/).waitFor({ timeout: patience });
    await page.getByText('Nothing was issued of these wells: no paper was copied.').waitFor();
    expect(await axeFaults(page)).toEqual([]);
    const folder = bindersBeside(program.archive);
    expect(readdirSync(folder)).toEqual(['Yearly.pdf']);
    const saving = page.waitForEvent('download');
    await button('Save a copy: Yearly.pdf').click();
    expect((await saving).suggestedFilename()).toBe('Yearly.pdf');
  },
  patience,
);

it(
  'a kept binder is made again by choosing it, and can be stopped',
  async () => {
    await page.reload();
    await button('Binders').click();
    await button(/^Yearly$/).click();
    expect(await page.getByLabel('Committee sheet', { exact: true }).isChecked()).toBe(true);
    await button('Keep and make').click();
    await button('Stop').click();
    await page.getByText(/^Yearly was stopped/).waitFor({ timeout: patience });
    expect(existsSync(path.join(bindersBeside(program.archive), '.Yearly.binding'))).toBe(true);
    await button('Remove').click();
    await page.getByText('The binder Yearly is no longer kept.').waitFor();
    await page.getByText('No binder is kept yet.').waitFor();
  },
  patience,
);

const label = (page: Page) => (name: string) => page.getByLabel(name, { exact: true });

/** What the program keeps of a binder. */
async function keptBinder(name: string) {
  const kept = await program.service.call('binders.list', {});
  return kept.ok ? kept.value.find((one) => one.name === name)?.wish : undefined;
}

it(
  'wells and sections are chosen by keyboard in a small window, put in order and kept',
  async () => {
    const small = await program.newPage(800, 600);
    const named = label(small);
    const rows = (what: string) => named(`Chosen wells: ${what}`).getByRole('listitem');
    await small.getByRole('button', { name: 'Binders' }).click();
    await named('Name').fill('Chosen');
    await small.getByRole('radio', { name: /chosen one by one/ }).check();
    await small.getByText('Choose at least one well.').waitFor();
    await small.getByRole('button', { name: 'Choose wells: Wells' }).click();
    const first = small.getByRole('group', { name: 'Wells found' }).getByRole('checkbox').first();
    await first.check();
    await eventually(() => rows('Wells').count()).toBe(1);

    await small.getByRole('button', { name: 'Add a section' }).press('Enter');
    await small.keyboard.type('Along the river');
    await small.getByText('A section needs two wells at least.').waitFor();
    await small.getByRole('button', { name: 'Choose wells: Section 1' }).press('Enter');
    const finder = small.getByRole('group', { name: 'Section 1', exact: true }).last();
    await finder.getByRole('button', { name: /^Add all that the list shows/ }).press('Enter');
    await eventually(() => rows('Section 1').count()).toBe(2);
    const before = await rows('Section 1').allInnerTexts();
    expect(await axeFaults(small)).toEqual([]);
    await rows('Section 1')
      .first()
      .getByRole('button', { name: /^Move down/ })
      .focus();
    await small.keyboard.press('Alt+ArrowDown');
    await eventually(() => rows('Section 1').allInnerTexts()).toEqual([before[1], before[0]]);
    await small.getByText(/is now 2 of 2\.$/).waitFor();
    await small.keyboard.press('Delete');
    await eventually(() => rows('Section 1').allInnerTexts()).toEqual([before[1]]);
    const field = finder.getByRole('searchbox');
    await field.fill(before[0]!.split(' ')[0]!);
    await finder.getByText('Wells found: 1').waitFor();
    await field.press('Enter');
    await eventually(() => rows('Section 1').allInnerTexts()).toEqual([before[1], before[0]]);

    await small.getByRole('button', { name: 'Keep', exact: true }).click();
    await small.getByText('The binder Chosen is kept.').waitFor();
    const wish = await keptBinder('Chosen');
    expect(wish?.wells.ids).toHaveLength(1);
    expect(wish?.sections).toMatchObject([{ title: 'Along the river' }]);
    expect(wish?.sections[0]!.wellIds).toHaveLength(2);
    expect(wish?.sections[0]!.wellIds[1]).toBe(wish?.wells.ids![0]);
    await small.reload();
    await small.getByRole('button', { name: 'Binders' }).click();
    await small.getByRole('button', { name: 'Chosen', exact: true }).click();
    await eventually(() => rows('Section 1').allInnerTexts()).toEqual([before[1], before[0]]);
  },
  patience,
);

it('complains of nothing in the browser', () => {
  expect(program.complaints).toEqual([]);
});
