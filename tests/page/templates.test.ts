import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { axeFaults } from './axeFaults.ts';
import { eventually } from './desk.ts';
import { demoRecords, startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

beforeAll(async () => {
  program = await startProgram(demoRecords().slice(0, 1));
  page = await program.newPage();
  await button('Paper templates').click();
}, patience);
afterAll(() => program.close(), patience);

const example = path.resolve(import.meta.dirname, '../../docs/template.example.json');
const { logos, ...words } = JSON.parse(readFileSync(example, 'utf8')) as {
  readonly name: readonly string[];
  readonly logos: readonly [{ readonly data: string }];
};

const button = (name: string | RegExp) => page.getByRole('button', { name });
const file = (name: string, content: unknown) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(typeof content === 'string' ? content : JSON.stringify(content)),
});
const logo = {
  name: 'drop.png',
  mimeType: 'image/png',
  buffer: Buffer.from(logos[0].data, 'base64'),
};
const choose = (...files: ReturnType<typeof file>[]) =>
  page.locator('input[type="file"]').setInputFiles(files);

async function kept() {
  const answer = await program.service.call('templates.list', {});
  if (!answer.ok) throw new Error(answer.error.sentence);
  return answer.value.templates.map(({ name, usual }) => ({ name, usual }));
}

it('a template is taken with its logo within, and papers are made with the first', async () => {
  await page.getByText('There is no template yet').waitFor();
  await choose(file('Kelumvara.json', { ...words, logos }));
  await page.getByText('Kelumvara was taken into the archive.').waitFor();
  expect(await page.getByRole('radio', { name: /^Kelumvara/ }).isChecked()).toBe(true);
  expect(await page.getByRole('img', { name: 'A drop over a line' }).count()).toBe(1);
  expect(await kept()).toEqual([{ name: 'Kelumvara', usual: true }]);
  expect(await axeFaults(page)).toEqual([]);
});

it('a template waits for the pictures that it names', async () => {
  await choose(file('North.json', { ...words, logos: [{ says: 'A drop', file: 'drop.png' }] }));
  await page.getByText('North still lacks its pictures: drop.png.').waitFor();
  expect(await kept()).toHaveLength(1);
  await choose(logo);
  await page.getByText('North was taken into the archive.').waitFor();
  expect(await kept()).toEqual([
    { name: 'Kelumvara', usual: true },
    { name: 'North', usual: false },
  ]);
});

it('the sheet of an open well is headed by the chosen one, and by another as soon as it is', async () => {
  const other = await program.newPage();
  await other.locator('tbody button').first().click();
  const sheet = other.locator('#sheet');
  const second = sheet.getByText('Service des puits villageois');
  await second.waitFor();
  expect(await sheet.getByText('Maître d’ouvrage').count()).toBe(1);
  expect(await sheet.locator('image').count()).toBe(1);
  await page.getByRole('radio', { name: 'no template' }).check();
  await eventually(() => second.count()).toBe(0);
  expect(await sheet.getByText('Maître d’ouvrage').count()).toBe(0);
  await page.getByRole('radio', { name: /^Kelumvara/ }).check();
  await second.waitFor();
  await other.context().close();
});

it('what cannot be taken is said, and nothing changes', async () => {
  const said = page.getByRole('alert');
  await choose(file('Broken.json', '{"name": '));
  await eventually(() => said.textContent()).toBe('Broken.json is not written as JSON.');
  await choose(file('Empty.json', {}));
  await eventually(() => said.textContent()).toMatch(/^This is no template yet\. name: /);
  await choose(logo);
  await eventually(() => said.textContent()).toMatch(/^No template is among these files/);
  await choose(file('A.json', words), file('B.json', words));
  await eventually(() => said.textContent()).toMatch(/^More than one template was chosen/);
  const torn = { ...logo, buffer: logo.buffer.subarray(0, 60) };
  await choose(
    file('Torn.json', { ...words, logos: [{ says: 'A drop', file: 'drop.png' }] }),
    torn,
  );
  await eventually(() => said.textContent()).toMatch(/a logo is a damaged picture/);
  expect(await axeFaults(page)).toEqual([]);
  expect((await kept()).map(({ name }) => name)).toEqual(['Kelumvara', 'North']);
});

it('one of the same name is replaced only when that is wanted', async () => {
  await choose(file('North.json', { ...words, name: ['Wells of the north'] }));
  await page.getByText('North is in the archive already').waitFor();
  expect(await axeFaults(page)).toEqual([]);
  await button('Leave it as it is').click();
  expect(await page.getByText('Wells of the north').count()).toBe(0);
  await choose(file('North.json', { ...words, name: ['Wells of the north'] }));
  await button('Replace it').click();
  await page.getByText('Wells of the north').waitFor();
});

it('another one is chosen, or none, and one is taken away', async () => {
  await page.getByRole('radio', { name: /^North/ }).check();
  await page.getByText('Papers are made with North.').waitFor();
  expect(await kept()).toContainEqual({ name: 'North', usual: true });
  await page.getByRole('radio', { name: 'no template' }).check();
  await page.getByText('Papers are made without a template.').waitFor();
  expect((await kept()).every(({ usual }) => !usual)).toBe(true);
  await button('Take away: North').click();
  await button('Take away').last().click();
  await page.getByText('North was taken away.').waitFor();
  expect((await kept()).map(({ name }) => name)).toEqual(['Kelumvara']);
  expect(program.complaints).toEqual([]);
});
