import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** Faults that axe-core finds on all that a page shows, each with the first element that has it. */
export async function axeFaults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}
