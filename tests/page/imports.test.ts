import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { valueOf } from '../electron/archive/sample.ts';
import { axeFaults } from './axeFaults.ts';
import { startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

beforeAll(async () => {
  program = await startProgram([]);
  page = await program.newPage();
}, patience);
afterAll(() => program.close(), patience);

const button = (name: string) => page.getByRole('button', { name, exact: true });

const log =
  'Lot 3;;;\nBore;Top (ft);Base (ft);What\nW1;0;1,5;Sandy clay\nW1;1,5;deep;Gravel\nW2;0;3;Sand\n';

async function choose(text: string) {
  const file = { name: 'log.csv', mimeType: 'text/csv', buffer: Buffer.from(text) };
  await page.getByLabel('Choose files …').last().setInputFiles(file);
  await page.getByRole('heading', { name: 'Table log.csv' }).waitFor();
}

it('a table is shown with what was found out of it, and its columns can be matched anew', async () => {
  await button('Import').click();
  await choose(log);
  expect(await page.getByLabel('Headings on line').inputValue()).toBe('2');
  expect(await page.getByLabel('Between cells').inputValue()).toBe(';');
  expect(await page.getByLabel('Decimals').inputValue()).toBe(',');
  const top = page.getByLabel('Column Top (ft) is');
  expect(await top.inputValue()).toBe('log.from');
  expect(await page.getByLabel('Unit of Top (ft)').inputValue()).toBe('ft');
  expect(await page.getByLabel('Column What is').inputValue()).toBe('log.material');
  await top.selectOption('');
  await button('See what would come').click();
  await page.getByRole('alert').waitFor();
  await top.selectOption('log.from');
  await page.getByLabel('Unit of Top (ft)').selectOption('ft');
  expect(await axeFaults(page)).toEqual([]);
});

it('what would come is shown before anything changes, and then brought in', async () => {
  await button('See what would come').click();
  await page.getByText('New: 2').waitFor();
  await page.getByRole('row', { name: /^log\.csv:4 Base \(ft\) "deep" is not a number/ }).waitFor();
  expect(valueOf(program.archive.count())).toBe(0);
  expect(await axeFaults(page)).toEqual([]);
  await page.getByLabel(/^Reason for the change/).fill('Lot 3');
  await button('Bring in').click();
  await page.getByText('Brought in: 2 new, 0 revised, 0 left as they were.').waitFor();
  const [{ id } = { id: '' }] = valueOf(program.archive.list());
  // 1.5 ft, a foot being 0.3048 m exactly.
  expect(valueOf(program.archive.open(id)).document).toMatchObject({
    log: [{ to: 0.4572, material: 'clay', words: 'Sandy clay' }],
  });
});

it('a well that is there is asked about, and a matching is kept and offered again', async () => {
  await page.getByLabel('Name of this matching').fill('Lot 3');
  await button('Keep in the archive').click();
  await page.getByText('The matching is kept as “Lot 3”.').waitFor();
  await choose(log.replace('deep', '4'));
  await page.getByRole('option', { name: 'Lot 3' }).waitFor({ state: 'attached' });
  await page.getByLabel('Matching of the columns').selectOption({ label: 'Lot 3' });
  await button('See what would come').click();
  await page.getByText('The number of a well that is there: 1').waitFor();
  await page.getByLabel('What becomes of W1').selectOption('revise');
  expect(await axeFaults(page)).toEqual([]);
  await button('Bring in').click();
  await page.getByText('Brought in: 0 new, 1 revised, 0 left as they were.').waitFor();
  expect(program.complaints).toEqual([]);
});
