import type { Drawing } from '../../drawing/items.ts';
import { markup } from './markup.ts';
import type { SvgNode } from './node.ts';
import { pageTree, textStyle } from './pageTree.ts';
import { withPathIds } from './pathIds.ts';

function element(name: string, text: string): SvgNode {
  return { name, attributes: {}, text };
}

function styleSheet(fontsCss: string): string {
  const rules = Object.entries(textStyle).map(([name, value]) => `${name}:${value}`);
  return `${fontsCss}text{${rules.join(';')}}`;
}

/**
 * One page (counted from 0) as a drawing file that stands alone. `fontsCss` comes from
 * `fontFaces`; without it the viewer sets its own letters to the measured widths.
 * Throws when the drawing has no such page.
 */
export function paintSvg(drawing: Drawing, pageIndex: number, fontsCss = ''): string {
  const page = drawing.pages[pageIndex];
  if (!page) throw new Error(`The drawing has no page with index ${pageIndex}`);
  const root = pageTree(page, drawing.hatches);
  const head = [element('title', drawing.title), element('style', styleSheet(fontsCss))];
  const whole = {
    ...root,
    attributes: { ...root.attributes, 'xml:lang': drawing.language },
    children: [...head, ...(withPathIds(root).children ?? [])],
  };
  return `<?xml version="1.0" encoding="UTF-8"?>\n${markup(whole)}\n`;
}
