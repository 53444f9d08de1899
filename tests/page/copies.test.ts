import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openArchive } from '../../electron/archive/open.ts';
import { countingWorld, revise, valueOf } from '../electron/archive/sample.ts';
import { axeFaults } from './axeFaults.ts';
import { demoRecords, startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

beforeAll(async () => {
  program = await startProgram(demoRecords().slice(0, 2));
  page = await program.newPage();
}, patience);
afterAll(() => program.close(), patience);

const button = (name: string | RegExp) => page.getByRole('button', { name });

/** A copy of the archive beside it, in which its first well and one more went on. */
async function otherArchive(): Promise<void> {
  const { archive } = program;
  const file = path.join(path.dirname(archive.file), 'North.borefolio');
  await archive.copyTo(file);
  const other = valueOf(openArchive(file, countingWorld()));
  const [{ id } = { id: '' }] = valueOf(other.list());
  const { document } = valueOf(other.open(id));
  valueOf(revise(other, id, { ...(document as object), notes: 'there' }));
  valueOf(revise(archive, id, { ...(document as object), notes: 'here' }));
  valueOf(other.create('b', { schemaVersion: 1, identity: { number: 'LN-7' } }));
  other.close();
}

it('a backup is made and put back, and what came later is put aside', async () => {
  await button('Copies').click();
  await button('Make a backup now').click();
  await page.getByText('was made and read back whole').waitFor();
  valueOf(program.archive.create('later', { schemaVersion: 1 }));
  await button(/^Put back/)
    .first()
    .click();
  await button('Put back').last().click();
  await page.getByText('The archive holds again what').waitFor();
  expect(valueOf(program.archive.count())).toBe(2);
  expect(await page.getByRole('rowheader', { name: 'before restoring' }).count()).toBe(1);
  expect(await axeFaults(page)).toEqual([]);
});

it('another archive is taken in, and what went apart is shown side by side', async () => {
  await otherArchive();
  await button('Wells').click();
  await button('Copies').click();
  await button('Take in …: North.borefolio').click();
  await page.getByText('1 new well').waitFor();
  await page.getByRole('heading', { name: '1 well went on in both' }).waitFor();
  await button('Side by side').click();
  await page.getByRole('row', { name: /Notes here there$/ }).waitFor();
  expect(await axeFaults(page)).toEqual([]);
  await page.getByLabel('One well; the other record stands last').check();
  await button('Take in').last().click();
  await page.getByText('Added: 1. Continued: 0. Joined: 1.').waitFor();
  expect(valueOf(program.archive.count())).toBe(3);
});
