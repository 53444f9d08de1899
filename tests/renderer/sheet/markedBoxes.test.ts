// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { markedBoxes } from '../../../renderer/sheet/markedBoxes.ts';

/** Pixels for a millimetre in this window. */
const scale = 2;

/** Two numbers to a point: all that the window of the tests lacks of the real one. */
class Point {
  readonly x: number;
  readonly y: number;
  constructor(x: number, y: number) {
    this.x = x;
    this.y = y;
  }
  matrixTransform() {
    return new Point(this.x / scale, this.y / scale);
  }
}

/** A page on which shapes stand at the pixels that they name: left, top, right, bottom. */
function paperOf(shapes: string): SVGSVGElement {
  document.body.innerHTML = `<svg>${shapes}</svg>`;
  const paper = document.querySelector('svg')!;
  for (const shape of paper.querySelectorAll('[data-at]')) {
    const at = shape.getAttribute('data-at')!.split(' ').map(Number);
    const [left, top, right, bottom] = at;
    shape.getBoundingClientRect = () => ({ left, top, right, bottom }) as DOMRect;
  }
  return Object.assign(paper, { getScreenCTM: () => ({ inverse: () => ({}) }) as DOMMatrix });
}

beforeEach(() => {
  vi.stubGlobal('DOMPoint', Point);
});

const body = (at: string) => `<path class="marked" fill="#ccc" data-at="${at}"/>`;
const words = (at: string) => `<text class="marked" data-at="${at}">clay</text>`;
const stroke = (at: string) => `<path class="marked" fill="none" data-at="${at}"/>`;

describe('frames round what is marked', () => {
  it('are in millimetres of paper, with a little air', () => {
    const [box] = markedBoxes(paperOf(body('20 40 60 100')));
    expect(box?.x).toBeCloseTo(9.6);
    expect(box?.y).toBeCloseTo(19.6);
    expect(box?.width).toBeCloseTo(20.8);
    expect(box?.height).toBeCloseTo(30.8);
  });

  it('are round bodies alone where there are any', () => {
    const boxes = markedBoxes(paperOf(body('0 0 8 8') + words('20 0 28 8') + stroke('40 0 48 8')));
    expect(boxes.map(({ x }) => x)).toEqual([-0.4]);
  });

  it('are else round texts, and round lines only where nothing else is', () => {
    const left = (shapes: string) => markedBoxes(paperOf(shapes)).map(({ x }) => x);
    expect(left(stroke('40 0 48 8') + words('20 0 28 8'))).toEqual([9.6]);
    expect(left(stroke('40 0 48 8'))).toEqual([19.6]);
  });

  it('are one for a hatch and the ground that it lies on, two for bodies apart', () => {
    expect(markedBoxes(paperOf(body('0 0 8 8') + body('0 0 8 8')))).toHaveLength(1);
    expect(markedBoxes(paperOf(body('0 0 8 8') + body('0 20 8 28')))).toHaveLength(2);
  });

  it('are round the shapes of a marked group too', () => {
    const group = '<g class="marked"><path fill="#ccc" data-at="0 0 8 8"/></g>';
    expect(markedBoxes(paperOf(group))).toHaveLength(1);
  });

  it('are none where nothing is marked, or the page is not shown', () => {
    expect(markedBoxes(paperOf('<path fill="#ccc" data-at="0 0 8 8"/>'))).toEqual([]);
    const hidden = Object.assign(paperOf(body('0 0 8 8')), { getScreenCTM: () => null });
    expect(markedBoxes(hidden)).toEqual([]);
  });
});
