import type { HatchTile, Page } from '../../drawing/items.ts';
import { definitions } from './definitions.ts';
import { itemNode } from './item.ts';
import type { SvgNode, TreeOptions } from './node.ts';
import { mm, mms } from './number.ts';

/**
 * One page as a tree of SVG elements, in millimetres from its top left corner: the root, in it
 * the definitions and then the items in painting order. Neither `class` nor `style` is used; both
 * are left to whoever shows the page.
 */
export function pageTree(
  page: Page,
  hatches: Readonly<Record<string, HatchTile>>,
  options: TreeOptions = {},
): SvgNode {
  const { width, height, items } = page;
  return {
    name: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${mm(width)}mm`,
      height: `${mm(height)}mm`,
      viewBox: mms(0, 0, width, height),
      // The same limit as a PDF has when it says nothing; SVG's own is 4.
      'stroke-miterlimit': '10',
      'text-rendering': 'geometricPrecision',
    },
    children: [
      definitions(items, hatches, options),
      ...items.map((item) => itemNode(item, options)),
    ],
  };
}

/** Letters stand by their advances alone, as the layout measured them; inherited by all text. */
export const textStyle: Readonly<Record<string, string>> = {
  'font-kerning': 'none',
  'font-variant-ligatures': 'none',
  'white-space': 'pre',
};
