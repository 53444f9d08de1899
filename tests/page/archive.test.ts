import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { eventually } from './desk.ts';
import { demoRecords, startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

/** The example wells, and two in another district. */
const others = ['LN-2', 'LN-10'].map((number, at) => ({
  schemaVersion: 1 as const,
  identity: { number, state: 'drilled' as const },
  site: { district: 'Lindaro', latitude: 1.5 + at / 10, longitude: -6.1 },
}));

beforeAll(async () => {
  program = await startProgram([...demoRecords(), ...others]);
}, patience);
afterEach(async () => {
  await page.context().close();
  expect(program.complaints).toEqual([]);
}, patience);
afterAll(() => program.close(), patience);

const numbers = () => page.locator('tbody th button').allInnerTexts();
const count = (text: string) => page.locator('.count').filter({ hasText: text }).waitFor();
const sign = (number: string) => page.locator('.labels text', { hasText: number });
const boundary = (name: string, coordinates: unknown) => ({
  name: `${name}.geojson`,
  mimeType: 'application/geo+json',
  buffer: Buffer.from(
    JSON.stringify({
      type: 'Feature',
      properties: { name },
      geometry: { type: 'Polygon', coordinates },
    }),
  ),
});

async function addBackdrop(file: ReturnType<typeof boundary>) {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Add a boundary' }).click();
  await (await chooser).setFiles(file);
}

describe('the archive’s list', () => {
  it('is searched, filtered and sorted, and keeps it while a well is open', async () => {
    page = await program.newPage();
    await count('10 wells');
    expect((await numbers()).slice(-2)).toEqual(['LN-2', 'LN-10']);
    await page.getByRole('button', { name: 'District' }).first().click();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Space');
    await count('2 of 10 wells');
    await page.keyboard.press('Escape');
    await page.getByRole('columnheader', { name: 'Number' }).getByRole('button').click();
    await eventually(numbers).toEqual(['LN-10', 'LN-2']);
    await page.getByRole('button', { name: 'LN-2', exact: true }).click();
    await page.getByRole('heading', { name: 'LN-2' }).waitFor();
    await page.getByRole('button', { name: /Archive/ }).click();
    await eventually(numbers).toEqual(['LN-10', 'LN-2']);
    await page.getByRole('button', { name: 'Clear all' }).click();
    await count('10 wells');
    await page.getByRole('searchbox').fill('granit');
    await count('1 of 10 wells');
    await page.locator('td.match').filter({ hasText: 'remarks' }).waitFor();
  });

  it('duplicates a well as a template by key, without what was measured', async () => {
    page = await program.newPage();
    await page.getByRole('searchbox').fill('KV-25-011');
    await count('1 of');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Control+d');
    await page.getByRole('heading', { name: 'Well without a number' }).waitFor();
    await page.keyboard.type('KV-27-100');
    await page.getByRole('heading', { name: 'KV-27-100' }).waitFor();
    const found = async () => {
      const list = await program.service.call('wells.list', { search: 'KV-27-100' });
      const id = list.ok ? list.value[0]?.id : undefined;
      const desk = id === undefined ? undefined : await program.service.call('wells.desk', { id });
      return desk?.ok ? desk.value.desk.record : undefined;
    };
    await eventually(found).toMatchObject({ site: { district: 'Kelumvara' } });
    const record = (await found())!;
    expect(record.identity?.contractor).toBeTruthy();
    expect(record.strings?.[0]?.components.length).toBeGreaterThan(0);
    expect([record.log, record.levels, record.site?.village]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('moves a well to the bin and back, and empties the bin after asking', async () => {
    page = await program.newPage();
    await page.getByRole('searchbox').fill('LN');
    await count('2 of');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Delete');
    await page.getByText('LN-2 was moved to the bin.').waitFor();
    await count('1 of');
    await page.getByRole('button', { name: 'Put back' }).click();
    await count('2 of');
    await page.locator('[data-at="0"]').focus();
    await page.keyboard.press('Delete');
    await page.getByRole('button', { name: 'Bin (1)' }).click();
    await page.getByRole('button', { name: 'Empty the bin …' }).click();
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Escape');
    await eventually(() => page.getByRole('dialog').count()).toBe(0);
    expect(await page.locator('.bin tbody tr').count()).toBe(1);
    await page.getByRole('button', { name: 'Empty the bin …' }).click();
    await page.getByRole('button', { name: 'Empty the bin', exact: true }).click();
    await page.getByText('One well is gone for good.').waitFor();
    const check = await program.service.call('archive.check', {});
    expect(check.ok && check.value.broken).toEqual([]);
  });
});

describe('the map', () => {
  it('opens a well by a click on its sign, and shows the chosen one in list and map', async () => {
    page = await program.newPage();
    await sign('KV-26-004').waitFor();
    await page.locator('.sight').focus();
    await page.keyboard.press('PageDown');
    await page.locator('.signs .ring').waitFor();
    await eventually(() => page.locator('tr.chosen').count()).toBe(1);
    const chosen = await page.locator('tr.chosen th').innerText();
    await page.locator('.told').filter({ hasText: chosen }).waitFor();
    const id = await page.locator('[data-well]').first().getAttribute('data-well');
    const box = (await page.locator(`[data-well="${id}"]`).boundingBox())!;
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    await page.getByRole('tab', { name: 'Ground' }).waitFor();
  });

  it('moves and zooms by keys and mouse, and shows all again', async () => {
    page = await program.newPage();
    await sign('KV-26-004').waitFor();
    const scale = () => page.locator('.scale text').innerHTML();
    const first = await scale();
    await page.locator('.sight').focus();
    for (const key of ['+', '+', '+', 'ArrowRight']) await page.keyboard.press(key);
    await eventually(scale).not.toBe(first);
    await page.keyboard.press('0');
    await eventually(scale).toBe(first);
    await page.locator('.sight svg').hover();
    await page.mouse.wheel(0, -600);
    await eventually(scale).not.toBe(first);
  });

  it('takes a boundary from a file, keeps it, and removes it', async () => {
    page = await program.newPage();
    await addBackdrop(
      boundary('metres', [
        [
          [456789, 155000],
          [0, 0],
          [1, 1],
        ],
      ]),
    );
    await page.getByText('metres.geojson: geometry.coordinates[0][0]').waitFor();
    await addBackdrop(
      boundary('Kelumvara', [
        [
          [-6.9, 1.1],
          [-6.1, 1.1],
          [-6.1, 1.8],
          [-6.9, 1.1],
        ],
      ]),
    );
    await page.getByText('Kelumvara lies under the wells.').waitFor();
    await page.locator('.names text', { hasText: 'Kelumvara' }).waitFor();
    await page.reload();
    await page.locator('.names text', { hasText: 'Kelumvara' }).waitFor();
    await page.getByRole('button', { name: 'Remove the backdrop Kelumvara' }).click();
    await eventually(() => page.locator('.names text').count()).toBe(0);
  });
});

it.each([
  [1024, 768],
  [1280, 800],
])('needs no sideways scroll at %i by %i', async (width, height) => {
  page = await program.newPage(width, height);
  await sign('KV-26-004').waitFor();
  const over = await page.evaluate(() => {
    const { scrollWidth, clientWidth, scrollHeight, clientHeight } = document.documentElement;
    return [scrollWidth - clientWidth, scrollHeight - clientHeight];
  });
  expect(over).toEqual([0, 0]);
});
