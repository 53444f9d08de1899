import type { Viewport } from './viewport.ts';

/** One press of plus or minus, and of a button. */
export const zoomStep = 1.25;
/** Share of the window that an arrow moves by. */
const panStep = 0.15;

type Deed = (view: Viewport, turn: (by: 1 | -1) => void) => void;

const deeds: Readonly<Record<string, Deed>> = {
  '+': (view) => view.zoomBy(zoomStep),
  '=': (view) => view.zoomBy(zoomStep),
  '-': (view) => view.zoomBy(1 / zoomStep),
  '0': (view) => view.fit('page'),
  ArrowLeft: (view) => view.panBy(-panStep, 0),
  ArrowRight: (view) => view.panBy(panStep, 0),
  ArrowUp: (view) => view.panBy(0, -panStep),
  ArrowDown: (view) => view.panBy(0, panStep),
  PageUp: (_, turn) => turn(-1),
  PageDown: (_, turn) => turn(1),
};

/** What a key does to the sheet, or undefined where it does nothing there. */
export function deedOf(event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>) {
  if (event.ctrlKey || event.metaKey || event.altKey) return undefined;
  return deeds[event.key];
}
