import { afterAll, beforeAll, expect, it } from 'vitest';
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
