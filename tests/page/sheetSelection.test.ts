import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { eventually, openWell } from './desk.ts';
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

/** Every kind of part that a section shows, on a page, with the tab that its row stands in. */
const parts: readonly [what: string, path: string, tab: string, page: number][] = [
  ['a layer', 'log[4]', 'Ground', 1],
  ['a water strike', 'strikes[0]', 'Ground', 1],
  ['a pipe', 'strings[1].components[9]', 'Completion', 1],
  ['a seal', 'annulus[1]', 'Completion', 1],
  ['a water level', 'levels[3]', 'Water', 1],
  ['a layer of the second page', 'log[20]', 'Ground', 2],
];

const tab = (name: string) => page.getByRole('tab', { name, exact: true });
const inWindow = (selector: string) =>
  page
    .locator(selector)
    .first()
    .evaluate((one) => {
      const { top, bottom } = one.getBoundingClientRect();
      return bottom > 0 && top < innerHeight;
    });

/** Presses the first mark of a path on paper over which no other part and no edge of another lies. */
async function press(path: string) {
  const at = await page.evaluate((wanted) => {
    const shown = [...document.querySelectorAll(`#sheet [data-path^="${wanted}"]`)].filter((one) =>
      ['', '.'].includes((one.getAttribute('data-path') ?? '').slice(wanted.length).charAt(0)),
    );
    for (const one of shown.flatMap((each) => [each, ...each.querySelectorAll('*')])) {
      const { left, top, width, height } = one.getBoundingClientRect();
      for (const [across, down] of [0.5, 0.2, 0.8, 0.02, 0.98].flatMap((a) =>
        [0.5, 0.2, 0.8].map((d) => [a, d] as const),
      )) {
        const [x, y] = [left + width * across, top + height * down];
        const under = document.elementsFromPoint(x, y);
        const edge = under[0]?.closest('[data-edge]')?.getAttribute('data-edge');
        if (edge && !edge.startsWith(wanted)) continue;
        const hit = under.find((each) => each.closest('[data-path]') !== null);
        const own = hit?.closest('[data-path]')?.getAttribute('data-path') ?? '';
        if (own.startsWith(wanted)) return { x, y };
      }
    }
    return undefined;
  }, path);
  if (!at) throw new Error(`Nothing on the sheet shows ${path}`);
  await page.mouse.click(at.x, at.y);
}

describe.each(parts)('%s', (_, path, chapter, sheet) => {
  const number =
    path.startsWith('levels') || path.startsWith('strikes') ? 'KV-25-011' : 'KV-26-004';
  const other = chapter === 'Site' ? 'Well' : 'Site';
  const own = path === 'levels[3]' ? 'levels[4]' : path;

  it(
    'that is clicked on the drawing has its row chosen and in sight',
    async () => {
      page = await openWell(program, number, 1600, 1000);
      await tab(other).click();
      for (let at = 1; at < sheet; at += 1)
        await page.getByRole('button', { name: 'Next page' }).click();
      await page.getByText(`Page ${sheet} of`).waitFor({ state: 'attached' });
      await press(own);
      await tab(chapter).and(page.locator('[aria-selected="true"]')).waitFor();
      const row = `tr[aria-current="true"]:has([data-field^="${own}."])`;
      await page.locator(row).waitFor();
      await eventually(() => inWindow(row)).toBe(true);
    },
    patience,
  );

  it(
    'whose row is chosen is marked on the drawing, on its page',
    async () => {
      page = await openWell(program, number, 1600, 1000);
      await tab(chapter).click();
      await page.locator(`[data-field^="${own}."]`).first().focus();
      await page.getByText(`Page ${sheet} of`).waitFor({ state: 'attached' });
      const marked = page.locator(`#sheet .marked[data-path^="${own}"]`);
      await eventually(() => marked.count()).toBeGreaterThan(0);
      await eventually(() => inWindow(`#sheet .marked[data-path^="${own}"]`)).toBe(true);
    },
    patience,
  );
});

describe('a pipe', () => {
  it(
    'has its row chosen by a click anywhere between its walls',
    async () => {
      page = await openWell(program, 'KV-26-009', 1600, 1000);
      const column = await page.evaluate(() => {
        const all = [...document.querySelectorAll('[data-edge^="strings[0] "]')];
        const [top, foot] = all
          .filter((one) => / (top|foot)$/.test(one.getAttribute('data-edge')!))
          .map((one) => one.querySelector('line')!.getBoundingClientRect());
        return { x: top!.left + top!.width * 0.7, y: foot!.top - (foot!.top - top!.top) * 0.2 };
      });
      await page.mouse.click(column.x, column.y);
      await tab('Completion').and(page.locator('[aria-selected="true"]')).waitFor();
      await page
        .locator('tr[aria-current="true"]:has([data-field^="strings[0].components["])')
        .waitFor();
    },
    patience,
  );
});

describe('the pump', () => {
  it(
    'leads to its form, and its form marks it',
    async () => {
      page = await openWell(program, 'KV-25-011', 1600, 1000);
      await press('pump');
      await tab('Pump').and(page.locator('[aria-selected="true"]')).waitFor();
      await page.locator('[data-field="pump.intake"]').focus();
      await eventually(() =>
        page.locator('#sheet .marked[data-path^="pump"]').count(),
      ).toBeGreaterThan(0);
    },
    patience,
  );
});
