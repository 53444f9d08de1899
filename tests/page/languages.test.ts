import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { languages, type Language } from '../../core/base/language.ts';
import { views } from '../../renderer/archive/views.ts';
import { chapterIds } from '../../renderer/editors/chapter.ts';
import { interfaces } from '../../renderer/parts/words.ts';
import { startProgram, type Program } from './program.ts';
import { eventually, field, openWell } from './desk.ts';
import { textFaults } from './textFaults.ts';

const number = 'KV-25-011';
let program: Program;
beforeAll(async () => {
  program = await startProgram();
});
afterAll(() => program.close());

const speak = (language: Language) => program.service.call('settings.write', { language });

/** Texts that do not fit, by the place where they stand. */
async function faultsOf(language: Language, width: number, height: number): Promise<string[]> {
  const say = interfaces[language].practices;
  const page = await program.newPage(width, height);
  await page.getByRole('button', { name: number }).waitFor();
  const faults = (await page.evaluate(textFaults)).map((fault) => `archive: ${fault}`);
  await page.getByRole('button', { name: number }).click();
  await page.locator('#sheet text').first().waitFor();
  for (const chapter of chapterIds) {
    await page.locator(`#tab-${chapter}`).click();
    const found = await page.evaluate(textFaults);
    faults.push(...found.map((fault) => `${chapter}: ${fault}`));
  }
  await page.getByRole('button', { name: say.title, exact: true }).click();
  for (const make of [false, true]) {
    if (make) await page.getByRole('button', { name: say.make }).click();
    if (make) await page.locator('[data-figure=latrineM]').fill('50');
    const found = await page.evaluate(textFaults);
    faults.push(...found.map((fault) => `practices: ${fault}`));
  }
  await page.context().close();
  return faults;
}

/** The same in every view of the archive's page, and in the dialogs that it and a folder open. */
async function faultsOfViews(language: Language, width: number, height: number) {
  const { archive, exporting, revisions } = interfaces[language];
  const page = await program.newPage(width, height);
  const faults: string[] = [];
  const look = async (where: string) => {
    const found = await page.evaluate(textFaults);
    faults.push(...found.map((fault) => `${where}: ${fault}`));
  };
  const wells = page.getByRole('button', { name: number });
  await wells.waitFor();
  const bar = page.getByRole('navigation', { name: archive.views.label }).getByRole('button');
  for (const [at, view] of views.entries()) {
    await bar.nth(at).click();
    await page.locator('[aria-current=page]', { hasText: await bar.nth(at).innerText() }).waitFor();
    await look(view);
  }
  await bar.first().click();
  await page.getByRole('button', { name: archive.filters.more }).click();
  await look('more filters');
  await page.getByRole('button', { name: exporting.open }).click();
  await look('export');
  await page.keyboard.press('Escape');
  await wells.click();
  await page.getByRole('button', { name: revisions.open, exact: true }).click();
  await look('revisions');
  await page.context().close();
  return faults;
}

describe('the page', () => {
  for (const language of languages)
    for (const [width, height] of [
      [800, 600],
      [1600, 1000],
    ] as const)
      it(`has room for every text of its views in ${language} at ${width}×${height}`, async () => {
        await speak(language);
        expect(await faultsOfViews(language, width, height)).toEqual([]);
      });

  for (const language of languages)
    for (const [width, height] of [
      [1024, 768],
      [1600, 1000],
    ] as const)
      it(`has room for every text in ${language} at ${width}×${height}`, async () => {
        await speak(language);
        expect(await faultsOf(language, width, height)).toEqual([]);
      });

  it('speaks the language that is chosen, at once and in the next window', async () => {
    await speak('en');
    const page = await openWell(program, number);
    await page.locator('.look select').selectOption('fr');
    await page.getByRole('tab', { name: interfaces.fr.folder.chapters.ground }).waitFor();
    expect(await page.locator('html').getAttribute('lang')).toMatch(/^fr/);
    const other = await openWell(program, number);
    await other.getByRole('tab', { name: interfaces.fr.folder.chapters.ground }).waitFor();
    await page.locator('#sheet text', { hasText: 'Terrain' }).first().waitFor();
  });

  it('loses nothing of a field that is being typed when the language changes', async () => {
    await speak('en');
    const page = await openWell(program, number);
    await page.locator('#tab-ground').click();
    const cell = field(page, 'log[0].to');
    await cell.fill('0.5 fathoms');
    await speak('pt');
    await page.getByRole('tab', { name: interfaces.pt.folder.chapters.ground }).waitFor();
    expect(await cell.inputValue()).toBe('0.5 fathoms');
    await cell.fill('0,55');
    await page.keyboard.press('Tab');
    await eventually(() => cell.inputValue()).toBe('0,55');
  });

  it('complains of nothing in the browser', () => {
    expect(program.complaints).toEqual([]);
  });
});
