import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { eventually, field, kept, openWell, storedDesk, storedLog } from './desk.ts';
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

describe('the archive’s list', () => {
  it('finds a well by its place and opens it by keyboard', async () => {
    page = await program.newPage();
    await page.getByRole('searchbox').fill('nalvor');
    await page.getByText(/^\s*1 of \d+ wells/).waitFor();
    const found = page.getByRole('button', { name: 'KV-26-004' });
    const reached = () => found.evaluate((button) => button === document.activeElement);
    for (let stops = 0; stops < 20 && !(await reached()); stops += 1)
      await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /KV-26-004/ }).waitFor();
    await page.getByRole('button', { name: /Archive/ }).click();
    await page.getByRole('searchbox').waitFor();
  });

  it('says so when no well fits', async () => {
    page = await program.newPage();
    await page.getByRole('searchbox').fill('zzz');
    await page.getByText('No well fits “zzz”').waitFor();
  });

  it('makes a new well whose first interval starts at the ground', async () => {
    page = await program.newPage();
    await page.getByRole('button', { name: 'New well', exact: true }).click();
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-field'));
    await eventually(focused).toBe('identity.number');
    await page.keyboard.type('KV-27-001');
    await page.getByRole('heading', { name: 'KV-27-001' }).waitFor();
    await page.getByRole('tab', { name: 'Ground' }).click();
    await field(page, 'log[0].to').fill('1,5');
    await eventually(() => storedLog(program, 'KV-27-001')).toEqual([{ from: 0, to: 1.5 }]);
    expect(await field(page, 'log[0].from').inputValue()).toBe('0');
    expect(await field(page, 'log[1].from').inputValue()).toBe('1.5');
  });
});

describe('the open well', () => {
  it('shows a depth on the sheet as it is typed, takes it back, and keeps it', async () => {
    page = await openWell(program, 'KV-25-011');
    // On an A3 the whole well stands on one page.
    await page.locator('select', { hasText: 'A3' }).first().selectOption('A3');
    await page.locator('#sheet [data-path^="log[19]"]').first().waitFor({ state: 'attached' });
    const drawn = () => page.locator('#sheet').innerHTML();
    const before = await drawn();
    const path = await page.locator('#sheet [data-path^="log[19]"]').first().innerHTML();
    expect(path).not.toBe('');

    const last = (await storedLog(program, 'KV-25-011')).length - 1;
    await field(page, `log[${last}].to`).fill('33,1');
    await eventually(drawn).not.toBe(before);
    await kept(page);
    expect((await storedLog(program, 'KV-25-011')).at(-1)!.to).toBe(33.1);

    await page.keyboard.press('Control+z');
    expect(await field(page, `log[${last}].to`).inputValue()).toBe('32.6');
    await page.keyboard.press('Control+Shift+z');
    expect(await field(page, `log[${last}].to`).inputValue()).toBe('33.1');

    await kept(page);
    await page.reload();
    await eventually(() => field(page, `log[${last}].to`).inputValue()).toBe('33.1');
    await page.keyboard.press('Control+z');
    expect(await field(page, `log[${last}].to`).inputValue()).toBe('32.6');
  });

  it('keeps what it cannot read, says why at the cell, and leaves the record alone', async () => {
    page = await openWell(program, 'KV-25-014');
    const before = await storedLog(program, 'KV-25-014');
    await field(page, 'log[1].to').fill('3x');
    await page.keyboard.press('Tab');
    await page.getByText('To (m): “3x” is not a number. Write it like 12.5 or 12,5.').waitFor();
    expect(await field(page, 'log[1].to').getAttribute('aria-invalid')).toBe('true');
    const saidBy = await field(page, 'log[1].to').getAttribute('aria-describedby');
    expect(await page.locator(`[id="${saidBy}"]`).count()).toBe(1);
    await page.getByText('One entry cannot be read yet').waitFor();
    await page.keyboard.press('Control+s');
    expect(await storedLog(program, 'KV-25-014')).toEqual(before);
    await page.getByRole('tab', { name: 'Site' }).click();
    await page.getByRole('tab', { name: 'Ground' }).click();
    expect(await field(page, 'log[1].to').inputValue()).toBe('3x');
    await field(page, 'log[1].to').fill(String(before[1]!.to));
    expect(await page.getByText('One entry cannot be read yet').count()).toBe(0);
  });

  it('goes on with Enter, and the next interval starts where the last one ended', async () => {
    page = await openWell(program, 'KV-26-009');
    const count = (await storedLog(program, 'KV-26-009')).length;
    await field(page, `log[${count - 1}].minutesPerMetre`).focus();
    await page.keyboard.press('Enter');
    await page.keyboard.type('9,9');
    await page.keyboard.press('Enter');
    await page.keyboard.type('grav');
    await page.keyboard.press('Enter');
    await page.keyboard.type('grey');
    await kept(page);
    await eventually(async () => (await storedLog(program, 'KV-26-009'))[count]).toEqual({
      from: (await storedLog(program, 'KV-26-009'))[count - 1]!.to,
      to: 9.9,
      material: 'gravel',
      colour: 'grey',
    });
    await page.keyboard.press('Control+Delete');
    await eventually(async () => (await storedLog(program, 'KV-26-009')).length).toBe(count);
  });

  it('takes rows copied from a spreadsheet', async () => {
    page = await openWell(program, 'KV-26-002');
    const count = (await storedLog(program, 'KV-26-002')).length;
    await field(page, `log[${count}].from`).focus();
    await page.evaluate(() => {
      const data = new DataTransfer();
      data.setData('text/plain', '38\t38,4\tclay\r\n38,4\t39\tsand\r\n');
      const event = new ClipboardEvent('paste', {
        clipboardData: data,
        bubbles: true,
        cancelable: true,
      });
      document.activeElement?.dispatchEvent(event);
    });
    await eventually(async () => (await storedLog(program, 'KV-26-002')).slice(count)).toEqual([
      { from: 38, to: 38.4, material: 'clay' },
      { from: 38.4, to: 39, material: 'sand' },
    ]);
  });

  it('leads from a finding to its field', async () => {
    page = await openWell(program, 'KV-26-015');
    await field(page, 'log[0].to').fill('44');
    await page.getByRole('tab', { name: 'Pump' }).click();
    await page
      .getByRole('button', { name: /holds two materials/ })
      .first()
      .click();
    await page.getByRole('tab', { name: 'Ground', selected: true }).waitFor();
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-field'));
    await eventually(focused).toMatch(/^log\[\d+\]/);
    await page.getByRole('button', { name: 'Undo' }).click();
  });

  it('is saved before it is left, and is there again after it was', async () => {
    page = await openWell(program, 'KV-26-015');
    await page.getByRole('tab', { name: 'Well' }).click();
    await page.getByLabel('Purpose').fill('School');
    await page.getByRole('button', { name: /Archive/ }).click();
    await page.getByRole('button', { name: 'KV-26-015' }).click();
    await page.getByRole('tab', { name: 'Well' }).click();
    expect(await page.getByLabel('Purpose').inputValue()).toBe('School');
    expect(await storedDesk(program, 'KV-26-015')).toMatchObject({ revision: 2, unrevised: false });
  });
});
