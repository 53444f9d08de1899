import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { seededRandom } from '../../core/base/random.ts';
import { deskAfter } from '../../core/record/desk.ts';
import { openArchive } from '../../electron/archive/open.ts';
import { valueOf } from '../electron/archive/sample.ts';
import { eventually, field, kept, saving } from './desk.ts';
import { onDisk, openAt, run, type Running } from './process.ts';
import { builtPage, demoRecords, launch } from './program.ts';

const number = 'KV-25-011';
/** Milliseconds that a program, its window and what is done there may take on a busy machine. */
const patience = 180_000;
/** Programs that are killed, one after the other. */
const rounds = 8;

let folder: string;
let pageFolder: string;
let browser: Browser;
let file: string;
let running: Running[];

/** An archive of the demo wells, to be copied for each test. */
function makeArchive(target: string) {
  const archive = valueOf(openArchive(target, { now: () => new Date().toISOString() }));
  for (const record of demoRecords())
    valueOf(archive.create(record.identity?.id ?? crypto.randomUUID(), record));
  archive.close();
}

async function start(): Promise<Running> {
  const started = await run(file, pageFolder);
  running.push(started);
  return started;
}

const open = async ({ url }: Running) => openAt(browser, url, number);
const purpose = (page: Page) => page.getByLabel('Purpose');

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), 'borefolio-saving-'));
  makeArchive(path.join(folder, 'demo.borefolio'));
  pageFolder = await builtPage(folder);
  browser = await launch();
}, patience);
beforeEach(() => {
  running = [];
  file = path.join(mkdtempSync(path.join(folder, 'test-')), 'wells.borefolio');
  copyFileSync(path.join(folder, 'demo.borefolio'), file);
});
afterEach(async () => {
  for (const context of browser.contexts()) await context.close();
  for (const one of running) await one.kill();
}, patience);
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
}, patience);

describe('a program that is killed', { timeout: patience }, () => {
  it('has all that was shown as on disk, and undo leads back to what was opened', async () => {
    const opened = onDisk(file, number).desk;
    const first = await start();
    let page = await open(first);
    await purpose(page).fill('School');
    await page.getByRole('tab', { name: 'Ground' }).click();
    await field(page, 'log[1].to').fill('3x');
    await field(page, 'log[0].to').fill('1,1');
    await page.getByRole('tab', { name: 'Site' }).click();
    await field(page, 'site.village').fill('Elsewhere');
    await kept(page);
    await first.kill();

    page = await open(await start());
    expect(await purpose(page).inputValue()).toBe('School');
    await page.getByText('One entry cannot be read yet').waitFor();
    await page.getByRole('tab', { name: 'Ground' }).click();
    expect(await field(page, 'log[1].to').inputValue()).toBe('3x');
    expect(await field(page, 'log[0].to').inputValue()).toBe('1.1');

    const undo = page.getByRole('button', { name: 'Undo' });
    for (let steps = 4; steps > 0; steps -= 1) {
      expect(await undo.isEnabled()).toBe(true);
      await undo.click();
    }
    expect(await undo.isEnabled()).toBe(false);
    await kept(page);
    expect(onDisk(file, number)).toMatchObject({ desk: opened, unrevised: false, revision: 1 });
  });

  it(
    'keeps what it showed as on disk, whenever that happens',
    async () => {
      const random = seededRandom(20260309);
      let typed = '';
      for (let round = 0; round < rounds; round += 1) {
        const program = await start();
        const page = await open(program);
        // What stands in the field each time that the page says that all of it is on disk.
        await page.evaluate(() => {
          const line = document.querySelector('[data-saving]')!;
          const note = () => {
            if (line.getAttribute('data-saving') !== 'kept') return;
            const shown = document.querySelector<HTMLInputElement>(
              '[data-field="identity.purpose"]',
            );
            document.body.dataset['onDisk'] = shown?.value ?? '';
          };
          new MutationObserver(note).observe(line, { attributes: true });
          note();
        });
        await purpose(page).focus();
        await page.keyboard.press('End');
        const until = performance.now() + 150 + random() * 2000;
        while (performance.now() < until) {
          typed += String.fromCharCode(97 + Math.floor(random() * 26));
          await page.keyboard.type(typed.at(-1)!, { delay: random() * 120 });
        }
        await program.kill();
        const shown = await page.evaluate(() => document.body.dataset['onDisk'] ?? '');
        const { base, desk, moves, check } = onDisk(file, number);
        const stored = desk.record.identity?.purpose ?? '';
        expect(stored.startsWith(shown), `round ${round}: “${shown}” of “${stored}”`).toBe(true);
        expect(deskAfter(base, moves)).toEqual(desk);
        expect(check.broken).toEqual([]);
        typed = stored;
        await page.context().close();
      }
      expect(typed.length).toBeGreaterThan(8);
    },
    rounds * patience,
  );
});

describe('revisions', { timeout: patience }, () => {
  it('are made when asked for and on leaving, never by typing', async () => {
    const page = await open(await start());
    for (const word of ['one', 'two', 'three']) {
      await purpose(page).fill(word);
      await kept(page);
    }
    expect(await saving(page).textContent()).toMatch(
      /^On disk at \d\d:\d\d, later than revision 1$/,
    );
    expect(onDisk(file, number)).toMatchObject({ revision: 1, unrevised: true });

    await page.keyboard.press('Control+s');
    await saving(page)
      .filter({ hasText: /^Revision 2 saved at \d\d:\d\d$/ })
      .waitFor();
    await page.keyboard.press('Control+s');
    await purpose(page).fill('four');
    await page.getByRole('button', { name: /Archive/ }).click();
    await page.getByRole('searchbox').waitFor();
    const { revision, check, moves } = onDisk(file, number);
    expect([revision, check.broken, moves]).toEqual([3, [], []]);
  });

  it('are not made by closing the window, which loses nothing all the same', async () => {
    const page = await open(await start());
    page.on('dialog', (dialog) => void dialog.accept());
    await purpose(page).fill('typed last of all');
    await page.close({ runBeforeUnload: true });
    const purposeOnDisk = () => onDisk(file, number).desk.record.identity?.purpose;
    await eventually(purposeOnDisk).toBe('typed last of all');
    expect(onDisk(file, number).revision).toBe(1);
  });
});

describe('two windows on one well', { timeout: patience }, () => {
  it('see each other’s work and leave it in place', async () => {
    const program = await run(file, pageFolder);
    running.push(program);
    const page = await open(program);
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other.getByRole('tab', { name: 'Well', exact: true }).click();
    await purpose(other).fill('Theirs');
    await eventually(() => purpose(page).inputValue()).toBe('Theirs');
    await field(page, 'identity.programme').fill('Mine');
    await field(other, 'identity.contract').fill('C-9');
    await eventually(() => field(other, 'identity.programme').inputValue()).toBe('Mine');
    await eventually(() => field(page, 'identity.contract').inputValue()).toBe('C-9');
    await kept(page);
    await kept(other);
    expect(onDisk(file, number).desk.record.identity).toMatchObject({
      purpose: 'Theirs',
      programme: 'Mine',
      contract: 'C-9',
    });
    // The other's work is a step here too.
    await field(page, 'identity.contract').press('Control+z');
    await eventually(() => field(other, 'identity.contract').inputValue()).not.toBe('C-9');
  });

  it('ask whose work stands where they changed the same place, and lose neither', async () => {
    const program = await start();
    const page = await open(program);
    const other = await page.context().newPage();
    await other.goto(page.url());
    await other.getByRole('tab', { name: 'Well', exact: true }).click();
    let release = () => {};
    const held = new Promise<void>((done) => (release = done));
    await page.route('**/call/wells.edit', async (route) => {
      await held;
      await route.continue();
    });
    await purpose(page).fill('Mine');
    await page.locator('[data-saving="saving"]').waitFor();
    await purpose(other).fill('Theirs');
    await kept(other);
    release();
    await page.getByText('Another window changed the same place.').first().waitFor();
    expect(await purpose(page).inputValue()).toBe('Mine');
    await page.getByRole('button', { name: 'Take the other window’s' }).click();
    await eventually(() => purpose(page).inputValue()).toBe('Theirs');
    await kept(page);
    await page.keyboard.press('Control+z');
    expect(await purpose(page).inputValue()).toBe('Mine');
    await eventually(() => purpose(other).inputValue()).toBe('Mine');
  });

  it('see each other’s work from two programs on one archive', async () => {
    const page = await open(await start());
    const other = await open(await start());
    await purpose(other).fill('Theirs');
    await eventually(() => purpose(page).inputValue()).toBe('Theirs');
    await field(page, 'identity.programme').fill('Mine');
    await eventually(() => field(other, 'identity.programme').inputValue()).toBe('Mine');
    expect(onDisk(file, number).desk.record.identity).toMatchObject({
      purpose: 'Theirs',
      programme: 'Mine',
    });
  });
});
