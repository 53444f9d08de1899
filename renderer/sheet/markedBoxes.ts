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

/** Boxes round the marked parts of a page, in millimetres of paper; none within another part. */
export function markedBoxes(paper: SVGSVGElement): Box[] {
  const toPaper = paper.getScreenCTM()?.inverse();
  if (!toPaper) return [];
  return [...paper.querySelectorAll(`.${markedClass}`)]
    .filter((element) => !element.parentElement?.closest(`.${markedClass}`))
    .map((element) => boxOf(element, toPaper));
}
