import type { Box } from '../../core/drawing/items.ts';
import { markedClass } from '../paint/source.ts';

/** Millimetres of paper left free round what is framed. */
const air = 0.4;

function boxOf(element: Element, toPaper: DOMMatrix): Box {
  const { left, top, right, bottom } = element.getBoundingClientRect();
  const first = new DOMPoint(left, top).matrixTransform(toPaper);
  const last = new DOMPoint(right, bottom).matrixTransform(toPaper);
  return {
    x: first.x - air,
    y: first.y - air,
    width: last.x - first.x + 2 * air,
    height: last.y - first.y + 2 * air,
  };
}

/**
 * What is framed, the first kind that there is: bodies, else texts, else lines. Frames round
 * lines of text or leaders would run through their neighbours; those are coloured alone.
 */
const kinds = [':is(path:not([fill="none"]), image)', 'text', 'path'];

/** One box for shapes that lie on each other, as a hatch does on its ground. */
function distinct(boxes: readonly Box[]): Box[] {
  const key = (box: Box) => [box.x, box.y, box.width, box.height].map((n) => n.toFixed(1)).join();
  return [...new Map(boxes.map((box) => [key(box), box])).values()];
}

/** Boxes round the marked shapes and texts of a page, in millimetres of paper. */
export function markedBoxes(paper: SVGSVGElement): Box[] {
  const marked = [...paper.getElementsByClassName(markedClass)];
  const shapes = new Set(marked.flatMap((one) => [one, ...one.querySelectorAll('*')]));
  const framed = kinds
    .map((kind) => [...shapes].filter((shape) => shape.matches(kind)))
    .find((of) => of.length > 0);
  const toPaper = framed && paper.getScreenCTM()?.inverse();
  if (!toPaper) return [];
  return distinct(framed.map((shape) => boxOf(shape, toPaper)));
}
