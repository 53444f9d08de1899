import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { eventually, field, kept, openWell, storedDesk, storedLog } from './desk.ts';
import { startProgram, type Program } from './program.ts';

/** Milliseconds that building the page and the whole entry may take on a busy machine. */
const patience = 240_000;

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

/** A hand on the keyboard and on nothing else, which counts what it presses. */
class Hand {
  presses = 0;
  readonly page: Page;
  constructor(on: Page) {
    this.page = on;
  }

  /** Keys one after the other; one with others held is one press. */
  async press(...keys: readonly string[]) {
    for (const key of keys) {
      this.presses += 1;
      await this.page.keyboard.press(key);
    }
  }

  /** A text letter by letter. */
  type(text: string) {
    return this.press(...[...text].map((letter) => (letter === ' ' ? 'Space' : letter)));
  }

  /** Texts of neighbouring fields, with Enter behind each; an empty one is passed over. */
  async enter(...texts: readonly string[]) {
    for (const text of texts) {
      await this.type(text);
      await this.press('Enter');
    }
  }

  /** Presses Tab until the hand is at a button with this word on it. */
  async tabTo(word: string) {
    const here = () => this.page.evaluate(() => document.activeElement?.textContent?.trim());
    for (let tabs = 0; tabs < 60 && (await here()) !== word; tabs += 1) await this.press('Tab');
    expect(await here()).toBe(word);
  }

  /** Sees that the hand is at a field, or at a button with this word on it. */
  async stands(where: string) {
    await eventually(() =>
      this.page.evaluate(() => {
        const { activeElement: one } = document;
        return one?.getAttribute('data-field') ?? one?.textContent?.trim();
      }),
    ).toBe(where);
  }
}

const number = 'KV-27-032';

/** The ground of each metre by short code: nine layers in 32 samples. */
const ground = [
  ['t', 1],
  ['l', 3],
  ['c', 4],
  ['s/c', 4],
  ['s', 5],
  ['c', 2],
  ['s', 6],
  ['g', 5],
  ['gt', 2],
] as const;

async function enterGround(hand: Hand) {
  await hand.press('Alt+3');
  await hand.stands('samples[0].material');
  for (const [code, metres] of ground)
    await hand.enter(...Array.from({ length: metres }, () => code));
  await hand.stands('samples[32].material');
  await hand.enter('');
  await hand.stands('Make the log from the samples');
  await hand.enter('');
  await hand.stands('log[0].from');
  await hand.press('Control+ArrowDown');
  await hand.stands('strikes[0].depth');
  await hand.enter('9.5', '8.4', '', '');
  await hand.stands('strikes[1].depth');
  await hand.enter('');
  await hand.stands('bore.method');
  await hand.enter('mud', '', '3/3/2026', '5/3/2026', '32');
  await hand.press('Control+ArrowDown');
  await hand.stands('bore.sections[0].to');
  await hand.enter('32', '8 1/2 in', '', '');
}

async function enterCompletion(hand: Hand) {
  await hand.stands('Add a string');
  await hand.enter('');
  await hand.stands('strings[0].name');
  await hand.enter('', '', '0.5');
  await hand.press('Control+ArrowDown');
  await hand.stands('strings[0].components[0].kind');
  await hand.enter('c', '', '0.05', '125', '6.5');
  await hand.enter('su', '', '2.9', '', '');
  await hand.enter('s', '4', '', '');
  await hand.press('Control+Enter');
  await hand.stands('strings[0].components[2].material');
  await hand.enter('', '', '');
  await hand.type('0.75');
  await hand.press('Escape');
  await hand.enter('');
  await hand.enter('p', '6', '', '', '', '');
  await hand.stands('annulus[0].to');
  await hand.enter('5', 'ce', '9', '7', 'c', '4', '31.5', 'g', '28', '32', 'ba', '', '');
  await hand.stands('headworks.padLength');
  await hand.enter('2', '2', '15 cm', '0.5');
}

async function enterWater(hand: Hand) {
  await hand.press('Alt+5');
  await hand.stands('levels[0].reading');
  await hand.enter('8.4', 'g', 'a', '6/3/2026 9:00');
  await hand.enter('14.2', '', 'p', '6/3/2026 13:00');
  await hand.press('Alt+6');
  await hand.stands('pump.kind');
  await hand.enter('deep', '', '', '20');
}

describe('a well entered by keyboard alone', () => {
  it(
    'goes in from an empty record to a finished sheet in fewer than 600 presses',
    async () => {
      page = await program.newPage(1600, 1000);
      await page.getByText('KV-25-011').first().waitFor();
      const hand = new Hand(page);
      await hand.tabTo('New well');
      await hand.enter('');
      await hand.stands('identity.number');
      // The count begins at the empty record.
      hand.presses = 0;
      await hand.enter(number, 'Tavo');
      await enterGround(hand);
      await enterCompletion(hand);
      await enterWater(hand);
      await hand.press('Control+s');
      await kept(page);

      const guide = readFileSync(path.join(import.meta.dirname, '../../docs/entry.md'), 'utf8');
      const stated = /\*\*(\d+) key presses\*\*/.exec(guide)?.[1];
      expect(hand.presses).toBeLessThan(600);
      expect(hand.presses).toBe(Number(stated));
    },
    patience,
  );

  it('is in the archive as it was typed', async () => {
    page = await program.newPage();
    const { record, typed } = (await storedDesk(program, number)).desk;
    expect(typed).toEqual({});
    expect(record.identity).toMatchObject({ number, name: 'Tavo' });
    expect(record.samples).toHaveLength(32);
    expect(record.samples?.[8]).toEqual({
      from: 8,
      to: 9,
      material: 'sand',
      qualifiers: [{ material: 'clay' }],
    });
    expect(record.log?.map(({ material, from, to }) => [material, from, to])).toEqual([
      ['topsoil', 0, 1],
      ['laterite', 1, 4],
      ['clay', 4, 8],
      ['sand', 8, 12],
      ['sand', 12, 17],
      ['clay', 17, 19],
      ['sand', 19, 25],
      ['gravel', 25, 30],
      ['granite', 30, 32],
    ]);
    expect(record.strikes).toEqual([{ depth: 9.5, rise: 8.4 }]);
    // 8 1/2 in of 25.4 mm.
    expect(record.bore).toMatchObject({
      method: 'mudRotary',
      startedOn: '2026-03-03',
      finishedOn: '2026-03-05',
      depthReached: 32,
      sections: [{ from: 0, to: 32, diameter: 215.9 }],
    });
    const [string] = record.strings ?? [];
    const pipes = string?.components.filter(({ kind }) => kind !== 'cap') ?? [];
    expect(pipes.reduce((sum, { count = 1 }) => sum + count, 0)).toBe(11);
    expect(string?.set).toEqual({ by: 'stickUp', height: 0.5 });
    expect(pipes[1]).toEqual({
      kind: 'screen',
      count: 4,
      length: 2.9,
      outside: 125,
      wall: 6.5,
      slotWidth: 0.75,
    });
    expect(record.annulus?.map(({ fill, from, to, sacks }) => [fill, from, to, sacks])).toEqual([
      ['cementGrout', 0, 5, 9],
      ['claySeal', 5, 7, 4],
      ['gravelPack', 7, 31.5, 28],
      ['backfill', 31.5, 32, undefined],
    ]);
    expect(record.headworks).toMatchObject({ padThickness: 0.15, casingAboveGround: 0.5 });
    expect(record.levels?.map(({ reading, datum, state }) => [reading, datum, state])).toEqual([
      [8.4, 'ground', 'static'],
      [14.2, 'ground', 'pumping'],
    ]);
    expect(record.pump).toMatchObject({ kind: 'deepwellLever', intake: 20 });
  });

  it('stands on its sheet, and nothing of it is found wrong', async () => {
    page = await openWell(program, number, 1600, 1000);
    const sheet = page.locator('#sheet');
    const words = async () => (await sheet.textContent()) ?? '';
    for (const word of ['TOPSOIL', 'clayey SAND', 'GRANITE', 'gravel pack', 'clay seal'])
      await eventually(words).toContain(word);
    for (const word of ['cement grout', 'screen 125 × 6.5', 'rest water level', number])
      expect(await words()).toContain(word);
    expect(await page.locator('.findings .flag.error').count()).toBe(0);
  });
});

describe('rows under a real keyboard', () => {
  it('are marked, copied and pasted without a text being marked', async () => {
    page = await openWell(program, 'KV-25-014');
    const before = await storedLog(program, 'KV-25-014');
    await field(page, 'log[0].from').focus();
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Control+c');
    await page.getByText('2 rows selected').waitFor({ state: 'attached' });
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+v');
    const log = () => storedLog(program, 'KV-25-014');
    await eventually(async () => (await log()).length).toBe(before.length + 2);
    expect((await log()).slice(1, 3)).toEqual(before.slice(0, 2));
    await page.keyboard.press('Control+z');
    await eventually(log).toEqual(before);
  });

  it('are copied where the hand has marked nothing, and cut by keys', async () => {
    page = await openWell(program, 'KV-25-014');
    const before = await storedLog(program, 'KV-25-014');
    await field(page, 'log[1].from').focus();
    await page.keyboard.press('End');
    await page.keyboard.press('Control+x');
    const log = () => storedLog(program, 'KV-25-014');
    await eventually(log).toEqual(before.toSpliced(1, 1));
    await page.keyboard.press('End');
    await page.keyboard.press('Control+v');
    await eventually(log).toEqual(before);
  });

  it('are filled down and inserted by keys that the browser leaves to the page', async () => {
    page = await openWell(program, 'KV-25-014');
    const [first] = await storedLog(program, 'KV-25-014');
    await field(page, 'log[1].material').focus();
    await page.keyboard.press('Control+d');
    const second = async () => (await storedLog(program, 'KV-25-014'))[1];
    await eventually(async () => (await second())?.material).toBe(first!.material);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Insert');
    await eventually(() => page.locator('tr.waiting[data-row="1"] input:focus').count()).toBe(1);
    await page.keyboard.press('Escape');
  });

  it('have their list of words above all that would cut it off', async () => {
    page = await openWell(program, 'KV-25-014', 1024, 768);
    await field(page, 'log[0].material').focus();
    await page.keyboard.press('ArrowDown');
    const list = page.getByRole('listbox');
    await list.waitFor();
    const [box, cell] = await Promise.all([
      list.boundingBox(),
      field(page, 'log[0].material').boundingBox(),
    ]);
    expect(Math.abs(box!.x - cell!.x)).toBeLessThan(2);
    const below = box!.y >= cell!.y + cell!.height;
    const above = box!.y + box!.height <= cell!.y;
    expect(below || above).toBe(true);
    const onTop = await page.evaluate(
      ([x, y]) => document.elementFromPoint(x!, y!)?.closest('[role=listbox]') !== null,
      [box!.x + 20, box!.y + box!.height - 8],
    );
    expect(onTop).toBe(true);
  });
});
