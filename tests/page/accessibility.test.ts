import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chapterIds } from '../../renderer/editors/chapter.ts';
import { demoRecords, startProgram, type Program } from './program.ts';
import { field, openWell } from './desk.ts';

const full = 'KV-25-011';
const bare = 'KV-00-000';
/** An invented set of guideline values, as a file. */
const decree = {
  name: 'decree.json',
  mimeType: 'application/json',
  buffer: Buffer.from(
    '{ "id": "decree", "version": "1", "name": "Decree on drinking water", "basedOn": "who2022" }',
  ),
};
/** Milliseconds that building the page and looking at all of it may take on a busy machine. */
const patience = 180_000;
let program: Program;
beforeAll(async () => {
  const empty = { schemaVersion: 1 as const, identity: { number: bare } };
  program = await startProgram([...demoRecords(), empty]);
}, patience);
afterAll(() => program.close(), patience);

/** Faults that axe-core finds on what a page shows, each with the first element that has it. */
async function faultsOn(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(document, {
      resultTypes: ['violations'],
    });
    return violations.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes[0]?.html}`);
  });
}

/** No fault of any impact is left; each would stand here with its element. */
const expectNone = async (page: Page, where: string) =>
  expect((await faultsOn(page)).map((fault) => `${where}: ${fault}`)).toEqual([]);

describe('axe-core finds no fault', () => {
  it('but finds one where there is one', async () => {
    const page = await openWell(program, bare);
    await page.evaluate(() =>
      document.querySelector('main')!.append(document.createElement('img')),
    );
    expect(await faultsOn(page)).toEqual([expect.stringMatching(/^critical image-alt/)]);
    await page.context().close();
  });

  for (const contrast of ['system', 'high'] as const)
    describe(`in the contrast ${contrast}`, () => {
      beforeAll(() => program.service.call('settings.write', { contrast }));

      it(
        'on the archive with its map, its menus, a chosen well, its bin and its question',
        async () => {
          const page = await program.newPage();
          await page.getByRole('button', { name: full }).waitFor();
          await expectNone(page, 'archive');
          for (const menu of ['State', 'Findings']) {
            await page.getByText(menu, { exact: true }).first().click();
            await expectNone(page, menu);
            await page.keyboard.press('Escape');
          }
          await page.getByRole('button', { name: bare }).focus();
          await page.keyboard.press('Delete');
          await page.getByText(`${bare} was moved to the bin.`).waitFor();
          await expectNone(page, 'moved to the bin');
          await page.getByRole('button', { name: /^Bin \(/ }).click();
          await page.getByRole('button', { name: 'Empty the bin' }).click();
          await page.getByRole('dialog').waitFor();
          await expectNone(page, 'emptying the bin');
          await page.keyboard.press('Escape');
          await expectNone(page, 'bin');
          const back = page.getByRole('button', { name: 'Put back' });
          await back.first().click();
          await page.context().close();
        },
        patience,
      );

      for (const number of [full, bare])
        it(
          `in any chapter of the well ${number}`,
          async () => {
            const page = await openWell(program, number);
            for (const chapter of chapterIds) {
              await page.locator(`#tab-${chapter}`).click();
              await expectNone(page, chapter);
            }
            await page.context().close();
          },
          patience,
        );

      it(
        'on the page of practices, of the program and of the user',
        async () => {
          const page = await program.newPage();
          await page.getByRole('button', { name: 'Practices', exact: true }).click();
          await page.getByRole('dialog').waitFor();
          await expectNone(page, 'shipped');
          const values = page.getByRole('region', { name: 'Guideline values for water' });
          await values.getByLabel('Guideline values from a file').setInputFiles(decree);
          await values.getByText('was taken from the file').waitFor();
          await values.getByRole('button', { name: /^Delete: / }).click();
          await expectNone(page, 'values');
          await values.getByRole('button', { name: 'Delete it' }).click();
          await values.getByText('was deleted').waitFor();
          await page.getByRole('button', { name: 'New, based on this one' }).click();
          await page.locator('[data-figure=latrineM]').fill('50');
          await expectNone(page, 'own');
          await page.getByRole('button', { name: 'Discard changes' }).click();
          await page.keyboard.press('Escape');
          await page.getByRole('dialog').waitFor({ state: 'detached' });
          await page.context().close();
        },
        patience,
      );

      it(
        'in a table with the rest of a row, marked rows, a list of words, and what is wrong',
        async () => {
          const page = await openWell(program, full);
          await page.locator('#tab-ground').click();
          const cell = field(page, 'log[1].material');
          await cell.focus();
          await page.keyboard.press('Control+Enter');
          await expectNone(page, 'rest');
          await cell.focus();
          await page.keyboard.press('Shift+ArrowDown');
          await expectNone(page, 'marked');
          await cell.fill('sa');
          await page.locator('[role=listbox]').first().waitFor();
          await expectNone(page, 'list');
          await page.keyboard.press('Escape');
          await field(page, 'log[0].to').fill('9');
          await field(page, 'log[2].to').fill('3x');
          await page.keyboard.press('Tab');
          await page.locator('[data-mark]').first().click();
          await expectNone(page, 'wrong');
          await page.keyboard.press('Escape');
          await field(page, 'log[2].to').fill('');
          await page.context().close();
        },
        patience,
      );
    });
});

interface Stop {
  readonly key: string;
  readonly name: string;
  readonly isSeen: boolean;
}

/** The control under the focus: what tells it from others, what names it, whether it is seen. */
const focused = (page: Page) =>
  page.evaluate((): Stop | undefined => {
    const active = document.activeElement as HTMLElement | null;
    if (!active || active === document.body) return undefined;
    const { labels } = active as HTMLInputElement;
    const name =
      active.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? active.textContent;
    const { outlineStyle, outlineWidth } = getComputedStyle(active);
    const isOutlined = outlineStyle !== 'none' && parseFloat(outlineWidth) >= 1.5;
    // An edge on the drawing shows its line instead of an outline.
    const edge = active.querySelector('.edge');
    const counter = document.documentElement.dataset;
    active.dataset.stop ??= counter.stops = String(Number(counter.stops ?? 0) + 1);
    return {
      key: active.dataset.stop,
      name: (name ?? '').replace(/\s+/g, ' ').trim(),
      isSeen: isOutlined || (edge !== null && getComputedStyle(edge).opacity === '1'),
    };
  });

/** Every stop of a key until the first comes again; throws where it never does. */
async function walk(page: Page, key: 'Tab' | 'Shift+Tab'): Promise<Stop[]> {
  const stops: Stop[] = [];
  for (let presses = 0; presses < 300; presses += 1) {
    await page.keyboard.press(key);
    const stop = await focused(page);
    if (stop && stop.key === stops[0]?.key) return stops;
    if (stop) stops.push(stop);
  }
  throw new Error(`${key} never came round; last at ${stops.at(-1)?.name}`);
}

describe('the Tab key', () => {
  it(
    'reaches each control of a folder, seen and named, and comes round',
    async () => {
      const page = await openWell(program, full);
      await page.locator('#tab-pump').click();
      const stops = await walk(page, 'Tab');
      expect(stops.filter(({ name, isSeen }) => name === '' || !isSeen)).toEqual([]);
      const names = stops.map(({ name }) => name);
      const first = names.indexOf('Pump');
      const round = [...names.slice(first), ...names.slice(0, first)];
      const inOrder = ['Pump', 'Kind', 'Serial number', 'Width of the tables', 'Export PDF'];
      expect(round.filter((name) => inOrder.includes(name))).toEqual(inOrder);
      for (const name of ['‹ Archive', 'Save', 'Language', 'High contrast'])
        expect(names).toContain(name);
    },
    patience,
  );

  it(
    'goes through a table and out of it, and back the same way',
    async () => {
      const page = await openWell(program, full);
      await page.locator('#tab-handover').click();
      await page.locator('[data-field="marks[0].name"]').focus();
      const stops = await walk(page, 'Tab');
      expect(stops.filter(({ name, isSeen }) => name === '' || !isSeen)).toEqual([]);
      await page.locator('[data-field="marks[0].name"]').focus();
      const back = await walk(page, 'Shift+Tab');
      const cells = (all: readonly Stop[]) =>
        all.map(({ name }) => name).filter((name) => /, row \d/.test(name));
      // Both walks begin beside the same cell and end on it.
      expect(cells(stops).length).toBeGreaterThan(15);
      expect(cells(back).toSorted()).toEqual(cells(stops).toSorted());
    },
    patience,
  );

  it(
    'reaches each control of the archive page',
    async () => {
      const page = await program.newPage();
      await page.getByRole('button', { name: full }).waitFor();
      const stops = await walk(page, 'Tab');
      expect(stops.filter(({ name, isSeen }) => name === '' || !isSeen)).toEqual([]);
      const names = stops.map(({ name }) => name);
      for (const name of ['New well', 'Language', 'Show the map', 'Zoom in'])
        expect(names).toContain(name);
    },
    patience,
  );
});
