import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { axeFaults } from './axeFaults.ts';
import { eventually, kept, openWell, storedDesk } from './desk.ts';
import { demoRecords, startProgram, type Program } from './program.ts';
import { textFaults } from './textFaults.ts';

const number = 'KV-25-011';
/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 180_000;

let program: Program;
let page: Page;
beforeAll(async () => {
  program = await startProgram(demoRecords().filter(({ identity }) => identity?.number === number));
}, patience);
afterEach(async () => {
  await page.context().close();
  expect(program.complaints).toEqual([]);
}, patience);
afterAll(() => program.close(), patience);

async function openHandover(width = 1600, height = 1000) {
  page = await openWell(program, number, width, height);
  await page.locator('#tab-handover').click();
}

const openFold = (heading: string) =>
  page.locator('details.fold > summary', { hasText: heading }).click();

async function download(deed: () => Promise<void>): Promise<string> {
  const [file] = await Promise.all([page.waitForEvent('download'), deed()]);
  return (await file.path())!;
}

describe('handing a well over in the page', () => {
  it(
    'issues a paper, makes a certificate, signs, and finds the paper whole when it comes back',
    async () => {
      await openHandover();
      await openFold('Issued papers and signatures');
      await page.getByRole('button', { name: 'Issue', exact: true }).click();
      await page.getByText('No. 1, revision').waitFor();
      await page.getByRole('button', { name: /^Sign …/ }).click();
      await page.getByLabel('Name in full', { exact: true }).fill('Yamélia Ɓossarin');
      const making = page.locator('form', { has: page.getByLabel('Passphrase again') });
      await making.getByLabel('Passphrase', { exact: true }).fill('tamarind by the well');
      await making.getByLabel('Passphrase again').fill('tamarind by the well');
      await making.getByRole('button').click();
      const signing = page.locator('li > form');
      await signing.getByLabel('Passphrase', { exact: true }).fill('tamarind by the well');
      await signing.getByRole('button', { name: 'Sign', exact: true }).click();
      await page.getByText('Signed by Yamélia Ɓossarin.').waitFor();
      await page.getByText('holds').waitFor();
      const file = await download(() =>
        page.getByRole('button', { name: /^Save the PDF/ }).click(),
      );
      await page.getByLabel('Choose a PDF').setInputFiles(file);
      await page.getByText('The archive has the same record.').waitFor();
      await page.getByText(`It says that it shows ${number}, revision 1.`).waitFor();
    },
    patience,
  );

  it(
    'takes a mark that is drawn with the mouse, onto the record and the sheet',
    async () => {
      await openHandover();
      await openFold('Marks by hand');
      const pad = page.locator('figure svg').first();
      await pad.scrollIntoViewIfNeeded();
      const box = (await pad.boundingBox())!;
      await page.mouse.move(box.x + 40, box.y + 40);
      await page.mouse.down();
      await page.mouse.move(box.x + 90, box.y + 70, { steps: 5 });
      await page.mouse.move(box.x + 140, box.y + 30, { steps: 5 });
      await page.mouse.up();
      await kept(page);
      await eventually(async () => {
        const { record } = (await storedDesk(program, number)).desk;
        return record.marks?.[0]?.kind;
      }).toBe('drawn');
    },
    patience,
  );

  it.each(languages)(
    'fits, and can be told and reached, in %s',
    async (language) => {
      await program.service.call('settings.write', { language });
      await openHandover(1024, 768);
      const folds = page.locator('details.fold > summary');
      for (let at = 0; at < (await folds.count()); at += 1) await folds.nth(at).click();
      await page.locator('ol > li .head button').nth(1).click();
      await page.locator('li form').first().waitFor();
      expect(await page.evaluate(textFaults)).toEqual([]);
      expect(await axeFaults(page)).toEqual([]);
    },
    patience,
  );
});
