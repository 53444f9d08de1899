import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { axeFaults } from './axeFaults.ts';
import { eventually, field, kept, openWell, storedDesk } from './desk.ts';
import { startProgram, type Program } from './program.ts';
import { textFaults } from './textFaults.ts';

const number = 'KV-25-011';
/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 180_000;

let program: Program;
let page: Page;
beforeAll(async () => {
  program = await startProgram();
}, patience);
afterEach(async () => {
  await page.context().close();
  expect(program.complaints).toEqual([]);
}, patience);
afterAll(() => program.close(), patience);

const fold = (name: string) => page.locator('details.fold', { hasText: name }).first();
const grips = () => page.locator('[data-grip]');

async function openFold(name: string) {
  await fold(name).locator('> summary').focus();
  await page.keyboard.press('Enter');
}

async function windowOf(test: number) {
  await kept(page);
  return (await storedDesk(program, number)).desk.record.tests?.[test]?.window;
}

/** Drags an end by its middle, with the mouse, and lets it go. */
async function drag(at: number, byX: number) {
  await grips().nth(at).scrollIntoViewIfNeeded();
  const box = (await grips().nth(at).boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + byX / 2, y, { steps: 4 });
  await page.mouse.move(x + byX, y, { steps: 4 });
  await page.mouse.up();
}

describe('the straight part of a test', () => {
  it(
    'is dragged by the mouse, moved by keys, typed, and undone',
    async () => {
      page = await openWell(program, number, 1280, 900);
      await page.keyboard.press('Alt+5');
      await openFold('What the tests say');
      await grips().first().waitFor();
      await drag(0, 60);
      const dragged = await windowOf(1);
      expect(dragged?.to).toBe(360);
      expect(dragged?.from).toBeGreaterThan(3);
      await expect
        .poll(() => field(page, 'tests[1].window.from').inputValue())
        .toBe(String(dragged?.from));

      await grips().nth(1).focus();
      await page.keyboard.press('ArrowLeft');
      expect(await windowOf(1)).toEqual({ from: dragged?.from, to: 300 });

      await field(page, 'tests[1].window.from').fill('5');
      expect(await windowOf(1)).toEqual({ from: 5, to: 300 });
      await page.getByText('from 5 to 300 min; chosen by hand').first().waitFor();

      // Three steps: typed, moved, dragged.
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+z');
      await eventually(() => windowOf(1)).toBeUndefined();
    },
    patience,
  );

  it(
    'of a recovery is dragged along t/t′',
    async () => {
      page = await openWell(program, number, 1280, 900);
      await page.keyboard.press('Alt+5');
      await openFold('What the tests say');
      await grips().nth(3).waitFor();
      await drag(3, -60);
      const window = await windowOf(2);
      expect(window?.to).toBe(240);
      expect(window?.from).toBeGreaterThan(2);
    },
    patience,
  );
});

describe('readings typed as they are read', () => {
  it(
    'take a time of day and a filled vessel',
    async () => {
      page = await openWell(program, number, 1280, 900);
      await page.keyboard.press('Alt+5');
      // The constant-rate test began at 06:30 and has 25 readings.
      await field(page, 'tests[1].series[25].minutes').fill('13:05');
      await field(page, 'tests[1].series[25].reading').fill('11.71');
      await field(page, 'tests[1].series[25].rate').fill('20 l in 30 s');
      await page.keyboard.press('Tab');
      await kept(page);
      const { record } = (await storedDesk(program, number)).desk;
      expect(record.tests?.[1]?.series?.[25]).toEqual({ minutes: 395, reading: 11.71, rate: 2.4 });
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+z');
      await page.keyboard.press('Control+z');
    },
    patience,
  );
});

describe('a slip in a series of readings', () => {
  it.each([
    ['en', 'lies above the rest level', 'What the tests say'],
    ['fr', 'est au-dessus du niveau statique', 'Ce que disent les essais'],
    ['pt', 'está acima do nível estático', 'O que dizem os ensaios'],
  ] as const)(
    'is said at its row in %s while the plots show the others',
    async (language, words, tests) => {
      await program.service.call('settings.write', { language });
      page = await openWell(program, number, 1024, 768);
      await page.keyboard.press('Alt+5');
      await openFold(tests);
      const analysed = page.locator('section.test').nth(1);
      await analysed.locator('figure').first().waitFor();
      const cell = field(page, 'tests[1].series[9].reading');
      await cell.fill('1');
      await page.keyboard.press('Enter');
      const sentence = page.locator('tr.troubles', { hasText: words });
      await sentence.waitFor();
      const described = (await cell.getAttribute('aria-describedby'))!;
      expect(await page.locator(`[id="${described}"]`).textContent()).toContain(words);
      expect(await analysed.textContent()).toContain('24 ');
      expect(await page.evaluate(textFaults)).toEqual([]);
      expect(await axeFaults(page)).toEqual([]);
      await page.keyboard.press('Control+z');
      await sentence.waitFor({ state: 'detached' });
      await kept(page);
      await program.service.call('settings.write', { language: 'en' });
    },
    patience,
  );
});

describe('a logger’s file', () => {
  it(
    'is taken into the series after a question, in room that fits its words',
    async () => {
      page = await openWell(program, number, 1024, 768);
      await page.keyboard.press('Alt+5');
      const start = page.getByRole('button', { name: 'Take readings from a logger’s file' }).nth(1);
      const [picker] = await Promise.all([page.waitForEvent('filechooser'), start.click()]);
      await picker.setFiles({
        name: 'logger.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from('minutes,level\n1,11.2\n2,11.3\n'),
      });
      await page.getByText('2 readings, from 11.20 to 11.30 m').waitFor();
      expect(await page.evaluate(textFaults)).toEqual([]);
      expect(await axeFaults(page)).toEqual([]);
      await page.getByRole('button', { name: 'Take these readings' }).click();
      await page.getByRole('button', { name: 'Replace', exact: true }).click();
      await page.getByText('2 readings taken').waitFor();
      await kept(page);
      const { record } = (await storedDesk(program, number)).desk;
      expect(record.tests?.[1]?.series).toEqual([
        { minutes: 1, reading: 11.2 },
        { minutes: 2, reading: 11.3 },
      ]);
      await page.keyboard.press('Control+z');
      await kept(page);
      expect((await storedDesk(program, number)).desk.record.tests?.[1]?.series).toHaveLength(25);
    },
    patience,
  );
});

/** Lays open every fold of the chapter, and what is folded in them. */
async function openAll() {
  await page.keyboard.press('Alt+5');
  for (const folded of ['details.fold', '.test details, .development details'])
    await page.evaluate((selector) => {
      const summaries = document.querySelectorAll<HTMLElement>(
        `#chapter :is(${selector}):not([open]) > summary`,
      );
      summaries.forEach((summary) => summary.click());
    }, folded);
  await page.locator('.test figure').first().waitFor();
}

describe('the Water chapter laid open', () => {
  it.each(languages)(
    'has room for all its text in %s',
    async (language) => {
      await program.service.call('settings.write', { language });
      page = await openWell(program, number, 1024, 768);
      await openAll();
      expect(await page.evaluate(textFaults)).toEqual([]);
      await program.service.call('settings.write', { language: 'en' });
    },
    patience,
  );

  it.each(['system', 'high'] as const)(
    'has no fault for axe-core in the contrast %s',
    async (contrast) => {
      await program.service.call('settings.write', { contrast });
      page = await openWell(program, number, 1280, 900);
      await openAll();
      expect(await axeFaults(page)).toEqual([]);
    },
    patience,
  );
});
