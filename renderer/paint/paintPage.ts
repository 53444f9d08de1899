import { select } from 'd3';
import type { Drawing } from '../../core/drawing/items.ts';
import { pageTree, textStyle } from '../../core/paint/svg/pageTree.ts';
import { joinNodes } from './join.ts';

/** Attributes of the page that depend on the drawing; its size on screen is the host's. */
const ofDrawing = ['viewBox', 'stroke-miterlimit', 'text-rendering'];

/**
 * Paints one page (counted from 0) into a live SVG element, or brings what stands in it up to
 * date. The element must hold nothing else. Elements that stand together on one screen need ids
 * of their own, since hatches are found by id. Throws when the drawing has no such page.
 */
export function paintPage(svg: SVGSVGElement, drawing: Drawing, pageIndex: number): void {
  const page = drawing.pages[pageIndex];
  if (!page) throw new Error(`The drawing has no page with index ${pageIndex}`);
  const root = pageTree(page, drawing.hatches, { idPrefix: svg.id ? `${svg.id}-` : '' });
  const element = select(svg);
  for (const name of ofDrawing) element.attr(name, root.attributes[name] ?? null);
  for (const [name, value] of Object.entries(textStyle)) element.style(name, value);
  joinNodes(svg, root.children ?? []);
}
