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

let placed: number[];

/** Shows the bar, 1000 pixels wide from 200 on. */
function showBar(start?: number) {
  placed = [];
  const props = { label: 'Width', left: side('tables'), right: side('sheet') };
  const onplaced = (at: number) => placed.push(at);
  show(Splitter, { ...props, ...(start !== undefined && { start }), onplaced });
  const held = new Set<number>();
  Object.assign(bar(), {
    setPointerCapture: (id: number) => held.add(id),
    hasPointerCapture: (id: number) => held.has(id),
  });
  one('.frame').getBoundingClientRect = () => ({ left: 200, width: 1000 }) as DOMRect;
}

const release = (key: string) =>
  bar().dispatchEvent(new KeyboardEvent('keyup', { key, bubbles: true }));

beforeEach(() => showBar());
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

  it('goes to its ends by Home and End', async () => {
    bar().focus();
    await press('End');
    expect(share()).toEqual(['70', '70%']);
    await press('Home');
    expect(share()).toEqual(['30', '30%']);
  });

  it('tells where it was left once the key is let go, and not on its way', async () => {
    bar().focus();
    await press('ArrowLeft');
    await press('ArrowLeft');
    expect(placed).toEqual([]);
    release('ArrowLeft');
    expect(placed).toEqual([46]);
  });

  it('tells where it was left once the pointer lets go', async () => {
    await point('pointerdown', 700);
    await point('pointermove', 600);
    expect(placed).toEqual([]);
    await point('lostpointercapture', 600);
    expect(placed).toEqual([40]);
  });

  it('tells nothing when it was only passed by', () => {
    release('Tab');
    expect(placed).toEqual([]);
  });

  it('starts where it was left, as far as there is room', async () => {
    await clear();
    showBar(42);
    expect(share()).toEqual(['42', '42%']);
    await clear();
    showBar(90);
    expect(share()).toEqual(['70', '70%']);
  });
});
