import type { Drawing } from '../../core/drawing/items.ts';
import type { SvgNode, TreeOptions } from '../../core/paint/svg/node.ts';
import { pageTree, textStyle } from '../../core/paint/svg/pageTree.ts';
import { joinNodes, setAttribute } from './join.ts';

/** Attributes of the page that depend on the drawing; its size on screen is the host's. */
const ofDrawing = ['viewBox', 'stroke-miterlimit', 'text-rendering'];

/** What each live page was painted from, as long as it keeps its id. */
const memories = new WeakMap<SVGSVGElement, TreeOptions>();

function optionsOf(svg: SVGSVGElement): TreeOptions {
  const idPrefix = svg.id ? `${svg.id}-` : '';
  const before = memories.get(svg);
  if (before?.idPrefix === idPrefix) return before;
  const options = { idPrefix, known: new WeakMap<object, SvgNode>() };
  memories.set(svg, options);
  return options;
}

/**
 * Paints one page (counted from 0) into a live SVG element, or brings what stands in it up to
 * date: items that are still the same objects are not looked at again. The element must hold
 * nothing else. Elements that stand together on one screen need ids of their own, since hatches
 * are found by id. Throws when the drawing has no such page.
 */
export function paintPage(svg: SVGSVGElement, drawing: Drawing, pageIndex: number): void {
  const page = drawing.pages[pageIndex];
  if (!page) throw new Error(`The drawing has no page with index ${pageIndex}`);
  const root = pageTree(page, drawing.hatches, optionsOf(svg));
  // Written again, even these would have the browser lay out every text of the page.
  for (const name of ofDrawing) setAttribute(svg, name, root.attributes[name] ?? '');
  for (const [name, value] of Object.entries(textStyle))
    if (svg.style.getPropertyValue(name) !== value) svg.style.setProperty(name, value);
  joinNodes(svg, root.children ?? []);
}
