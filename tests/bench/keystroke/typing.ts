import type { Page } from 'playwright-core';

/** Milliseconds between two letters of a hand that types well. */
const pace = 130;

/** Cells of the demo well's log, and what is typed over them: depths, a colour, a rate. */
const entries: readonly (readonly [cell: string, text: string])[] = [
  ['log[10].to', '8.35'],
  ['log[11].colour', 'dark brown'],
  ['log[14].from', '11.02'],
  ['log[12].colour', 'reddish grey'],
  ['log[20].minutesPerMetre', '14'],
];

async function press(page: Page, key: string) {
  await page.keyboard.press(key === ' ' ? 'Space' : key);
  await page.waitForTimeout(pace);
}

async function erase(page: Page, text: string) {
  for (let left = text.length; left > 0; left -= 1) await press(page, 'Backspace');
}

/** Types over each cell, letter by letter, and then puts back what stood there. */
export async function typeEntries(page: Page): Promise<void> {
  for (const [cell, text] of entries) {
    const field = page.locator(`[data-field="${cell}"]`);
    const before = await field.inputValue();
    await field.focus();
    await field.press('End');
    await page.waitForTimeout(4 * pace);
    await erase(page, before);
    for (const letter of text) await press(page, letter);
    await erase(page, text);
    for (const letter of before) await press(page, letter);
  }
}
