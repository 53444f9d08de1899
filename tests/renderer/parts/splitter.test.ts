// @vitest-environment jsdom
import { clear, one, press, settled, show } from '../mounted.ts';
import { createRawSnippet } from 'svelte';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import Splitter from '../../../renderer/parts/Splitter.svelte';

const side = (text: string) => createRawSnippet(() => ({ render: () => `<p>${text}</p>` }));
const bar = () => one<HTMLElement>('[role=separator]');
const share = () => [
  bar().getAttribute('aria-valuenow'),
  one<HTMLElement>('.frame').style.getPropertyValue('--share'),
];

/** A pointer event at a place across the window; the frame is 1000 pixels wide, from 200 on. */
async function point(kind: string, clientX: number) {
  const event = new MouseEvent(kind, { clientX, bubbles: true });
  bar().dispatchEvent(Object.assign(event, { pointerId: 1 }));
  await settled();
}

beforeEach(() => {
  show(Splitter, { label: 'Width', left: side('tables'), right: side('sheet') });
  const held = new Set<number>();
  Object.assign(bar(), {
    setPointerCapture: (id: number) => held.add(id),
    hasPointerCapture: (id: number) => held.has(id),
  });
  one('.frame').getBoundingClientRect = () => ({ left: 200, width: 1000 }) as DOMRect;
});
afterEach(clear);

describe('the bar between the tables and the sheet', () => {
  it('stands in the middle, the tables on its left', () => {
    expect(share()).toEqual(['50', '50%']);
    expect(bar().previousElementSibling?.textContent).toBe('tables');
    expect(bar().nextElementSibling?.textContent).toBe('sheet');
  });

  it('is reached by keyboard and says what it sets', () => {
    expect(bar().tabIndex).toBe(0);
    expect(bar().getAttribute('aria-label')).toBe('Width');
    expect(bar().getAttribute('aria-orientation')).toBe('vertical');
  });

  it('moves by arrows, which then do not scroll the page', async () => {
    bar().focus();
    expect(await press('ArrowLeft')).toBe(false);
    expect(share()).toEqual(['48', '48%']);
    await press('ArrowRight');
    await press('ArrowRight');
    expect(share()).toEqual(['52', '52%']);
  });

  it('leaves other keys to the browser', async () => {
    bar().focus();
    expect(await press('ArrowDown')).toBe(true);
    expect(share()).toEqual(['50', '50%']);
  });

  it('stops where one side would have no room, and says those ends', async () => {
    bar().focus();
    for (let times = 0; times < 15; times += 1) await press('ArrowLeft');
    expect(share()).toEqual([bar().getAttribute('aria-valuemin'), '30%']);
    for (let times = 0; times < 25; times += 1) await press('ArrowRight');
    expect(share()).toEqual([bar().getAttribute('aria-valuemax'), '70%']);
  });

  it('follows the pointer that took hold of it', async () => {
    await point('pointerdown', 700);
    await point('pointermove', 600);
    expect(share()).toEqual(['40', '40%']);
    await point('pointermove', 5000);
    expect(share()).toEqual(['70', '70%']);
  });

  it('does not follow a pointer that only passes over it', async () => {
    await point('pointermove', 600);
    expect(share()).toEqual(['50', '50%']);
  });
});
