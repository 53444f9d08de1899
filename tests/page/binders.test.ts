import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bindersBeside } from '../../electron/binder/bindingDesk.ts';
import { axeFaults } from './axeFaults.ts';
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
    await page.getByLabel('Most pages of a volume').fill('3');
    await page.getByText('A whole number from 10 to 1000.').waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByLabel('Most pages of a volume').fill('250');
    await button('Keep and make').click();
    await page.getByText(/^Yearly: 2 wells on \d+ pages\.$/).waitFor({ timeout: patience });
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
