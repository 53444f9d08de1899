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

/** Leaders and other lines run through their neighbours: they are coloured and not framed. */
const isLine = (element: Element) => element.matches('path[fill="none"]');

/** Boxes round the marked parts of a page, in millimetres of paper; none within another part. */
export function markedBoxes(paper: SVGSVGElement): Box[] {
  const toPaper = paper.getScreenCTM()?.inverse();
  if (!toPaper) return [];
  const marked = [...paper.querySelectorAll(`.${markedClass}`)].filter(
    (element) => !element.parentElement?.closest(`.${markedClass}`),
  );
  const bodies = marked.filter((element) => !isLine(element));
  return (bodies.length > 0 ? bodies : marked).map((element) => boxOf(element, toPaper));
}
