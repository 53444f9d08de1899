import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { axeFaults } from './axeFaults.ts';
import { eventually, field, kept, openWell, storedDesk } from './desk.ts';
import { startProgram, type Program } from './program.ts';
import { textFaults } from './textFaults.ts';

const number = 'KV-00-045';
/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 180_000;

/** A hole that waits for its casing: clay, an aquifer from 18 m, water at 6 m. */
const drilled: WellRecord = {
  schemaVersion: 1,
  identity: { number, state: 'drilled' },
  bore: { depthReached: 32, sections: [{ from: 0, to: 32, diameter: 200 }] },
  log: [
    { from: 0, to: 18, material: 'clay' },
    { from: 18, to: 32, material: 'sand', grain: 'coarse', moisture: 'waterBearing' },
  ],
  levels: [{ reading: 6, datum: 'ground', state: 'static' }],
};

let program: Program;
let page: Page;
beforeAll(async () => {
  program = await startProgram([drilled]);
}, patience);
afterEach(async () => {
  await page.context().close();
  expect(program.complaints).toEqual([]);
}, patience);
afterAll(() => program.close(), patience);

async function press(...keys: readonly string[]) {
  for (const key of keys) await page.keyboard.press(key);
}

/** Types texts into one field after the other, by keyboard alone. */
async function type(texts: readonly string[]) {
  for (const text of texts) {
    if (text !== '') await page.keyboard.type(text);
    await press('Tab');
  }
}

describe('a well that is drilled', () => {
  it(
    'is laid out by keyboard from the pipes on site, taken, and poured step by step',
    async () => {
      page = await openWell(program, number, 1440, 900);
      await press('Alt+4');
      await field(page, 'layingOut.rate').focus();
      await type(['1', '8', '2', '0.4', '1', '2']);
      await field(page, 'layingOut.pipes[0].kind').focus();
      await type(['plain', '14', '3', '110', '4.2', '']);
      await field(page, 'layingOut.pipes[1].kind').focus();
      await type(['screen', '3', '3', '110', '4.2', '0.5']);
      await page.getByRole('button', { name: 'Propose completions' }).focus();
      await press('Enter');
      const cards = page.locator('article');
      await cards.first().waitFor();
      expect(await cards.count()).toBeLessThanOrEqual(3);
      await cards.first().getByRole('button', { name: 'Take this one' }).focus();
      await press('Enter');
      await page.getByText('The proposal stands in the record now.').waitFor();
      await page.locator('#sheet text', { hasText: 'gravel pack' }).first().waitFor();

      await page.locator('summary', { hasText: 'Poured as we go' }).focus();
      await press('Enter');
      await kept(page);
      const { annulus = [] } = (await storedDesk(program, number)).desk.record;
      const pack = annulus.findIndex(({ fill }) => fill === 'gravelPack');
      expect(pack).toBeGreaterThanOrEqual(0);
      await field(page, `annulus[${pack}].pours[0].sacks`).focus();
      await type(['2', '', '20']);
      await page.getByText('Stands higher than what was poured can reach').waitFor();
      await kept(page);
      const { desk } = await storedDesk(program, number);
      expect(desk.record.annulus?.[pack]?.pours).toEqual([{ sacks: 2, sounded: 20 }]);
      expect(desk.record.layingOut?.proposal?.strings).toEqual(desk.record.strings);
      // Pipes, pack, seals: one step of undo brings back the hole that waits.
      await press('Control+z', 'Control+z', 'Control+z');
      await eventually(async () => {
        await kept(page);
        return (await storedDesk(program, number)).desk.record.strings;
      }).toBeUndefined();
    },
    patience,
  );

  it.each(languages)(
    'has room for all that is laid open in %s, and no fault for axe-core',
    async (language) => {
      await program.service.call('settings.write', { language });
      page = await openWell(program, number, 1024, 768);
      await press('Alt+4');
      await page.locator('.proposals > button').click();
      await page.locator('article').first().waitFor();
      const folded = page.locator('details.fold:not([open]) > summary');
      while ((await folded.count()) > 0) await folded.first().click();
      expect(await page.evaluate(textFaults)).toEqual([]);
      expect(await axeFaults(page)).toEqual([]);
    },
    patience,
  );
});
