/**
 * The way through a chapter from block to block. A block is marked with `data-block`; the hand
 * stops at its first field, in an empty table behind what the waiting row starts with, or at the
 * button that is marked with `data-stop`.
 */

type Entry = HTMLElement & { value?: string };

function stopIn(block: HTMLElement): HTMLElement | undefined {
  const own = (one: HTMLElement) => one.closest('[data-block]') === block;
  const fields = [...block.querySelectorAll<Entry>('[data-field]')].filter(own);
  const [first] = fields;
  if (!first)
    return [...block.querySelectorAll<HTMLElement>('[data-stop]:not(:disabled)')].find(own);
  const row = first.closest('tr.waiting');
  return (row && fields.find((one) => row.contains(one) && one.value === '')) ?? first;
}

/** Where the hand goes from an element to the next (1) or the block before (-1), if any. */
export function nextStop(
  panel: HTMLElement,
  from: HTMLElement | undefined,
  by: 1 | -1,
): HTMLElement | undefined {
  const blocks = [...panel.querySelectorAll<HTMLElement>('[data-block]')];
  const here = from?.closest<HTMLElement>('[data-block]');
  const start = here ? blocks.indexOf(here) + by : by === 1 ? 0 : blocks.length - 1;
  for (let at = start; blocks[at] !== undefined; at += by) {
    const stop = stopIn(blocks[at]!);
    if (stop) return stop;
  }
  return undefined;
}

/** Puts the hand into a field, with its text selected to be typed over. */
export function handTo(stop: HTMLElement | undefined) {
  stop?.focus();
  if (stop instanceof HTMLInputElement) stop.select();
}
