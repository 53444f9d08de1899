import { afterAll, beforeAll, expect, it } from 'vitest';
import { eventually, openWell } from './desk.ts';
import { startProgram, type Program } from './program.ts';

let program: Program;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

beforeAll(async () => {
  program = await startProgram();
}, patience);
afterAll(() => program.close(), patience);

it(
  'the way a sheet lies and its columns are chosen by keyboard, and kept for the next well',
  async () => {
    const page = await openWell(program, 'KV-25-011');
    const width = () => page.locator('#sheet').getAttribute('width');
    const layout = page.getByRole('button', { name: 'Layout', exact: true });
    await layout.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('radio', { name: 'lying', exact: true }).focus();
    await page.keyboard.press('Space');
    await eventually(width).toBe('297');
    await page.getByRole('radio', { name: 'always whole', exact: true }).check();
    const byRecord = page.getByRole('checkbox', { name: 'what the record brings' });
    await byRecord.focus();
    await page.keyboard.press('Space');
    const colour = page.getByRole('checkbox', { name: 'Colour', exact: true });
    await colour.focus();
    await page.keyboard.press('Space');
    const heads = page.locator('#sheet text');
    await eventually(() => heads.filter({ hasText: /^Colour$/ }).count()).toBe(0);
    expect(await heads.filter({ hasText: /^Moisture$/ }).count()).toBe(1);
    await page.keyboard.press('Escape');
    await eventually(() => layout.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.context().close();
    const later = await openWell(program, 'KV-26-004');
    await eventually(() => later.locator('#sheet').getAttribute('width')).toBe('297');
    await later.getByRole('button', { name: 'Layout', exact: true }).click();
    const kept = later.getByRole('checkbox', { name: 'Colour', exact: true });
    expect(await kept.isChecked()).toBe(false);
    expect(await later.getByRole('radio', { name: 'always whole', exact: true }).isChecked()).toBe(
      true,
    );
    await later.context().close();
    expect(program.complaints).toEqual([]);
  },
  patience,
);
