// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { deedOf } from '../../../renderer/sheet/sheetKeys.ts';
import { Viewport } from '../../../renderer/sheet/viewport.ts';

const a4 = { width: 210, height: 297 };
const sight = { width: 654, height: 618 };
let world: SVGGElement;
let board: SVGSVGElement;
let view: Viewport;
let resized: () => void;

const svgElement = <N extends 'svg' | 'g'>(name: N) =>
  document.createElementNS('http://www.w3.org/2000/svg', name);

/** Pixels for a millimetre and where the page's corner stands, as the board shows it. */
function standing() {
  const numbers = (world.getAttribute('transform') ?? '').match(/-?\d[\d.e-]*/g) ?? [];
  const [x = NaN, y = NaN, k = NaN] = numbers.map(Number);
  return { x, y, k };
}
const soon = (read: () => unknown) => expect.poll(read, { timeout: 5000, interval: 5 });

function giveSight({ width, height }: typeof sight) {
  Object.defineProperty(board, 'clientWidth', { value: width, configurable: true });
  Object.defineProperty(board, 'clientHeight', { value: height, configurable: true });
}

beforeEach(() => {
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  vi.stubGlobal(
    'ResizeObserver',
    class {
      constructor(run: () => void) {
        resized = run;
      }
      observe() {}
      disconnect() {
        resized = () => undefined;
      }
    },
  );
  [board, world] = [svgElement('svg'), svgElement('g')];
  board.append(world);
  document.body.replaceChildren(board);
  giveSight(sight);
  view = new Viewport(board, world);
  view.setPage(a4);
});
afterEach(() => {
  view.stop();
  vi.unstubAllGlobals();
});

describe('the sight of a sheet', () => {
  it('shows the whole page first', () => {
    expect(standing()).toEqual({ k: 2, x: (654 - 420) / 2, y: 12 });
  });

  it('fits the width on demand, and goes on to fit it as the window changes', () => {
    view.fit('width');
    expect(standing().k).toBe(3);
    giveSight({ width: 444, height: 618 });
    resized();
    expect(standing().k).toBe(2);
  });

  it('fits another page as the last one was', () => {
    view.fit('width');
    view.setPage({ width: 315, height: 420 });
    expect(standing().k).toBe(2);
  });

  it('stays where the user put it when the window changes', async () => {
    view.zoomBy(2);
    await soon(() => standing().k).toBe(4);
    giveSight({ width: 300, height: 300 });
    resized();
    expect(standing().k).toBe(4);
  });

  it('zooms about the middle of the window', async () => {
    const middle = ({ x, k }: ReturnType<typeof standing>) => (sight.width / 2 - x) / k;
    const before = middle(standing());
    view.zoomBy(2);
    await soon(() => standing().k).toBe(4);
    expect(middle(standing())).toBeCloseTo(before);
  });

  it('zooms no further in than its scales go', async () => {
    view.zoomBy(1000);
    await soon(() => standing().k).toBe(60);
  });

  it('moves by a share of the window', () => {
    const before = standing();
    view.panBy(0.15, 0);
    expect(standing().x).toBeCloseTo(before.x - 0.15 * sight.width);
    expect(standing().y).toBeCloseTo(before.y);
  });

  it('moves to what is asked for where none of it is in sight', async () => {
    view.zoomBy(5);
    await soon(() => standing().k).toBe(10);
    view.reveal([{ x: 10, y: 280, width: 4, height: 2 }]);
    await soon(() => standing().x + 12 * 10).toBeCloseTo(sight.width / 2);
    expect(standing().y + 281 * 10).toBeCloseTo(sight.height / 2);
  });

  it('stays where a part of what is asked for is in sight', () => {
    const before = standing();
    const inside = { x: 10, y: 10, width: 5, height: 5 };
    view.reveal([{ x: 9000, y: 0, width: 1, height: 1 }, inside]);
    view.reveal([]);
    expect(standing()).toEqual(before);
  });

  it('follows the window no longer when it was closed', () => {
    view.stop();
    giveSight({ width: 100, height: 100 });
    resized();
    expect(standing().k).toBe(2);
  });
});

describe('keys on the sheet', () => {
  const key = (name: string, held: object = {}) =>
    deedOf({ key: name, ctrlKey: false, metaKey: false, altKey: false, ...held });
  const turned: number[] = [];
  const press = (name: string) => key(name)?.(view, (by) => turned.push(by));

  it('zoom in and out by the same step', async () => {
    press('+');
    await soon(() => standing().k).toBeCloseTo(2.5);
    press('-');
    await soon(() => standing().k).toBeCloseTo(2);
    press('=');
    await soon(() => standing().k).toBeCloseTo(2.5);
  });

  it('show the whole page again with 0', async () => {
    press('+');
    await soon(() => standing().k).toBeCloseTo(2.5);
    press('0');
    expect(standing().k).toBe(2);
  });

  it.each([
    ['ArrowRight', -1, 0],
    ['ArrowLeft', 1, 0],
    ['ArrowDown', 0, -1],
    ['ArrowUp', 0, 1],
  ])('%s moves the sight that way, the page the other', (name, x, y) => {
    const before = standing();
    press(name);
    expect(Math.sign(Math.round(standing().x - before.x))).toBe(x);
    expect(Math.sign(Math.round(standing().y - before.y))).toBe(y);
  });

  it('turn pages back and on', () => {
    press('PageUp');
    press('PageDown');
    expect(turned).toEqual([-1, 1]);
  });

  it('are left to the browser with Ctrl, Alt or Meta, and where they mean nothing here', () => {
    expect(key('+', { ctrlKey: true })).toBeUndefined();
    expect(key('ArrowLeft', { altKey: true })).toBeUndefined();
    expect(key('0', { metaKey: true })).toBeUndefined();
    expect(key('x')).toBeUndefined();
  });
});
