import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { eventually, field, kept, openWell } from './desk.ts';
import { carry, depthOf, drag, edge, gripOf, pixelsPerMetre, storedRecord } from './edges.ts';
import { startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 180_000;

beforeAll(async () => {
  program = await startProgram();
}, patience);
afterEach(async () => {
  await page.context().close();
  expect(program.complaints).toEqual([]);
}, patience);
afterAll(() => program.close(), patience);

const isRound = (depthM: number, stepM: number) =>
  Math.abs(depthM / stepM - Math.round(depthM / stepM)) < 1e-6;
const undo = () => page.keyboard.press('Control+z');

describe('an edge under the mouse', () => {
  it(
    'moves a boundary of two layers, snapped to the centimetre, as one step',
    async () => {
      page = await openWell(program, 'KV-25-011', 1600, 1000);
      const before = await storedRecord(program, 'KV-25-011');
      const [upper, lower] = [before.log![3]!, before.log![4]!];
      await drag(page, 'log[3].to', 0.5);
      const toM = await depthOf(page, 'log[3].to');
      expect(toM).toBeCloseTo(upper.to + 0.5, 0);
      expect(toM).not.toBe(upper.to);
      expect(isRound(toM, 0.01)).toBe(true);
      expect(await field(page, 'log[3].to').inputValue()).toBe(String(toM));
      expect(await field(page, 'log[4].from').inputValue()).toBe(String(toM));
      await kept(page);
      await eventually(async () => (await storedRecord(program, 'KV-25-011')).log).toEqual(
        before.log!.with(3, { ...upper, to: toM }).with(4, { ...lower, from: toM }),
      );
      await undo();
      expect(await depthOf(page, 'log[3].to')).toBe(upper.to);
      expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
      await kept(page);
      expect((await storedRecord(program, 'KV-25-011')).log).toEqual(before.log);
    },
    patience,
  );

  it(
    'shows the depth and both thicknesses while it is held, saves nothing yet, and Esc gives it back',
    async () => {
      page = await openWell(program, 'KV-25-011');
      const before = await storedRecord(program, 'KV-25-011');
      const sheet = () =>
        page
          .locator('#sheet text')
          .evaluateAll((all) =>
            all.map((one) => [one.textContent, one.getAttribute('y')].join(' ')).sort(),
          );
      const drawn = await sheet();
      await carry(page, 'log[3].to', 0.5);
      const heldM = await depthOf(page, 'log[3].to');
      const figures = await page.locator('.beside .box').innerText();
      expect(figures).toContain(`${heldM.toFixed(2)} m`);
      expect(figures).toContain(`${(heldM - before.log![3]!.from).toFixed(2)} m`);
      expect(figures).toContain(`${(before.log![4]!.to - heldM).toFixed(2)} m`);
      await eventually(sheet).not.toEqual(drawn);
      await page.waitForTimeout(1200);
      expect(await storedRecord(program, 'KV-25-011')).toEqual(before);
      await page.keyboard.press('Escape');
      await page.mouse.up();
      await eventually(sheet).toEqual(drawn);
      expect(await depthOf(page, 'log[3].to')).toBe(before.log![3]!.to);
      expect(await storedRecord(program, 'KV-25-011')).toEqual(before);
    },
    patience,
  );

  it(
    'is coarser with Shift and with Ctrl',
    async () => {
      page = await openWell(program, 'KV-25-011');
      await drag(page, 'log[3].to', 0.37, 'Shift');
      expect(isRound(await depthOf(page, 'log[3].to'), 0.1)).toBe(true);
      await undo();
      await drag(page, 'log[3].to', 0.6, 'Control');
      expect(isRound(await depthOf(page, 'log[3].to'), 0.5)).toBe(true);
      await undo();
    },
    patience,
  );

  it(
    'moves pack, seal, level, intake and string, each as it is written in the record',
    async () => {
      const number = 'KV-25-011';
      page = await openWell(program, number, 1600, 1000);
      // On an A3 the whole well stands on one page.
      await page.locator('select', { hasText: 'A3' }).first().selectOption('A3');
      await edge(page, 'strings[0] foot').waitFor({ state: 'attached' });
      const before = await storedRecord(program, number);
      const perM = await pixelsPerMetre(page);
      expect(perM).toBeGreaterThan(5);
      await drag(page, 'annulus[2].to', -0.6);
      const packTop = await depthOf(page, 'annulus[2].to');
      await drag(page, 'annulus[1].to', 1, 'Alt');
      const sealTop = await depthOf(page, 'annulus[2].from');
      await drag(page, 'levels[4].reading', -1);
      const levelM = await depthOf(page, 'levels[4].reading');
      await drag(page, 'pump.intake', 2);
      const intake = await depthOf(page, 'pump.intake');
      await drag(page, 'strings[0] foot', 0.3);
      const footM = await depthOf(page, 'strings[0] foot');
      await kept(page);
      const after = await storedRecord(program, number);
      expect(after.annulus).toEqual(
        before
          .annulus!.with(2, { ...before.annulus![2]!, from: sealTop, to: packTop })
          .with(3, { ...before.annulus![3]!, from: packTop }),
      );
      expect(after.levels![4]!.reading).toBeCloseTo(levelM + before.levels![4]!.reading - 9.86, 6);
      expect(after.pump).toMatchObject({ intake });
      expect(after.pump!.cylinderTop).toBeCloseTo(before.pump!.cylinderTop! + intake - 21.5, 6);
      expect(after.strings![0]!.set).toEqual({ by: 'bottom', depth: footM });
      expect(new Set([packTop, sealTop, levelM, intake, footM]).size).toBe(5);
      for (let step = 0; step < 5; step += 1) await undo();
      await kept(page);
      expect(await storedRecord(program, number)).toEqual(before);
    },
    patience,
  );

  it(
    'is taken hold of zoomed in and on the second page, and the page does not pan meanwhile',
    async () => {
      const number = 'KV-26-004';
      page = await openWell(program, number);
      const paper = async () => (await page.locator('.paper').boundingBox())!;
      await page.getByRole('button', { name: 'Next page' }).click();
      await page.getByText('Page 2 of').waitFor({ state: 'attached' });
      await page.getByRole('button', { name: 'Fit width' }).click();
      await page.waitForTimeout(400);
      const ids = await page
        .locator('[data-edge^="log["]')
        .evaluateAll((all) => all.map((one) => one.getAttribute('data-edge')!));
      expect(ids.length).toBeGreaterThan(2);
      const id = ids[1]!;
      const [placed, fromM] = [await paper(), await depthOf(page, id)];
      await drag(page, id, 0.4);
      const toM = await depthOf(page, id);
      expect(toM).toBeCloseTo(fromM + 0.4, 1);
      expect(await paper()).toEqual(placed);
      await kept(page);
      const log = (await storedRecord(program, number)).log!;
      expect(log.some(({ to }) => to === toM)).toBe(true);
      await undo();
      await kept(page);
    },
    patience,
  );

  it(
    'follows a finger as it follows the mouse, and the sheet does not pan under it',
    async () => {
      page = await openWell(program, 'KV-26-002', 1600, 1000);
      const placed = await page.locator('.paper').boundingBox();
      const [{ x, y }, fromM] = [await gripOf(page, 'log[2].to'), await depthOf(page, 'log[2].to')];
      const perM = await pixelsPerMetre(page);
      const finger = await page.context().newCDPSession(page);
      await finger.send('Emulation.setTouchEmulationEnabled', { enabled: true });
      const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', byM: number) =>
        finger.send('Input.dispatchTouchEvent', {
          type,
          touchPoints: type === 'touchEnd' ? [] : [{ x, y: y + byM * perM }],
        });
      await touch('touchStart', 0);
      for (const byM of [0.1, 0.2, 0.3]) await touch('touchMove', byM);
      await page.locator('.hand.held').waitFor();
      await touch('touchEnd', 0.3);
      await eventually(() => depthOf(page, 'log[2].to')).toBeCloseTo(fromM + 0.3, 1);
      expect(await depthOf(page, 'log[2].to')).not.toBe(fromM);
      expect(await page.locator('.paper').boundingBox()).toEqual(placed);
      await undo();
      await kept(page);
    },
    patience,
  );

  it(
    'chooses its part when it is pressed without a drag, and says why a joint stays',
    async () => {
      page = await openWell(program, 'KV-25-011', 1600, 1000);
      const before = await storedRecord(program, 'KV-25-011');
      const at = await gripOf(page, 'log[3].to');
      await page.mouse.click(at.x, at.y);
      await eventually(() => page.locator('tr[aria-current="true"]').count()).toBe(1);
      const joint = await gripOf(page, 'strings[0] joint 2');
      await page.mouse.move(joint.x, joint.y);
      await page.mouse.down();
      await page.mouse.move(joint.x, joint.y + 30, { steps: 3 });
      await page.getByRole('status').filter({ hasText: 'A joint comes from the tally' }).waitFor({
        state: 'attached',
      });
      await page.mouse.up();
      await kept(page);
      expect(await storedRecord(program, 'KV-25-011')).toEqual(before);
    },
    patience,
  );
});

describe('an edge under the keyboard', () => {
  it(
    'is one tab stop, goes by arrows, merges its nudges, and leads to its row',
    async () => {
      const number = 'KV-25-014';
      page = await openWell(program, number);
      const before = (await storedRecord(program, number)).log!;
      const focused = () =>
        page.evaluate(() => document.activeElement?.getAttribute('data-edge') ?? '');
      expect(await page.locator('[data-edge][tabindex="0"]').count()).toBe(1);
      await page.locator('[data-edge][tabindex="0"]').focus();
      while ((await focused()) !== 'log[1].to') await page.keyboard.press('ArrowRight');
      for (const key of ['ArrowDown', 'ArrowDown', 'Shift+ArrowDown', 'ArrowUp'])
        await page.keyboard.press(key);
      expect(await depthOf(page, 'log[1].to')).toBeCloseTo(before[1]!.to + 0.11, 9);
      const name = await edge(page, 'log[1].to').getAttribute('aria-label');
      expect(name).toMatch(/ at \d+\.\d\d m$/);
      await undo();
      expect(await depthOf(page, 'log[1].to')).toBe(before[1]!.to);
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Escape');
      expect(await depthOf(page, 'log[1].to')).toBe(before[1]!.to);
      expect(await focused()).toBe('log[1].to');
      await page.keyboard.press('PageDown');
      expect(await depthOf(page, 'log[1].to')).toBeGreaterThan(before[1]!.to);
      await undo();
      await page.keyboard.press('Enter');
      const typing = () => page.evaluate(() => document.activeElement?.getAttribute('data-field'));
      await eventually(typing).toBe('log[1].to');
    },
    patience,
  );
});

describe('a screen', () => {
  const kinds = async (number: string) =>
    (await storedRecord(program, number)).strings![0]!.components.map(({ kind }) => kind);

  it(
    'is drawn over a string from its top to its foot, and typed as well',
    async () => {
      const number = 'KV-26-015';
      page = await openWell(program, number, 1600, 1000);
      const before = await kinds(number);
      await page.getByRole('button', { name: 'Screen', exact: true }).click();
      const over = (await page.locator('[data-screen-tool]').boundingBox())!;
      const [top, perM] = [(await gripOf(page, 'log[0].from')).y, await pixelsPerMetre(page)];
      const x = over.x + over.width / 2;
      await page.mouse.move(x, top + 20 * perM);
      await page.mouse.down();
      await page.mouse.move(x, top + 22 * perM, { steps: 3 });
      await eventually(() => page.locator('.beside .box').innerText()).toMatch(/screen .*m.*m/);
      await page.keyboard.press('Escape');
      await page.mouse.up();
      expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
      await page.mouse.move(x, top + 20 * perM);
      await page.mouse.down();
      await page.mouse.move(x, top + 22 * perM, { steps: 3 });
      await page.mouse.up();
      await page
        .getByRole('status')
        .filter({ hasText: /Screen from .* was put/ })
        .waitFor();
      await kept(page);
      expect((await kinds(number)).filter((kind) => kind === 'screen').length).toBeGreaterThan(
        before.filter((kind) => kind === 'screen').length,
      );
      await undo();
      await page.getByRole('form', { name: 'Screen' }).getByLabel('From (m)').fill('8,5');
      await page.getByRole('form', { name: 'Screen' }).getByLabel('To (m)').fill('9.5');
      await page.getByRole('button', { name: 'Put screen in' }).click();
      await page.getByText('Screen from 8.50 m to 9.50 m was put').waitFor();
      await undo();
      await kept(page);
      expect(await kinds(number)).toEqual(before);
    },
    patience,
  );
});

describe('a finding', () => {
  it(
    'stands beside its depth with what it means, and leads to its field',
    async () => {
      page = await openWell(program, 'KV-25-014');
      expect(await page.locator('[data-mark]').count()).toBe(0);
      await field(page, 'log[1].to').fill('2.9');
      const mark = page.locator('[data-mark="log.gap"], [data-mark="log.overlap"]').first();
      await mark.waitFor();
      const name = await mark.getAttribute('aria-label');
      expect(name).toMatch(/ m: /);
      await mark.focus();
      await page.keyboard.press('Enter');
      const card = page.getByRole('dialog');
      await card.waitFor();
      for (const head of ['Why it matters', 'What to do', 'Source'])
        expect(await card.getByText(head, { exact: true }).count()).toBe(1);
      await page.keyboard.press('Escape');
      await card.waitFor({ state: 'detached' });
      expect(await mark.evaluate((one) => one === document.activeElement)).toBe(true);
      await mark.click();
      await card.getByRole('button', { name: 'Go to the field' }).click();
      const typing = () => page.evaluate(() => document.activeElement?.getAttribute('data-field'));
      await eventually(typing).toMatch(/^log\[/);
      await page.getByRole('button', { name: 'Findings on the drawing' }).click();
      expect(await page.locator('[data-mark]').count()).toBe(0);
      await kept(page);
      await undo();
    },
    patience,
  );
});
