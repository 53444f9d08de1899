import { printable } from '../../base/text/printable.ts';
import type { TextItem } from '../../drawing/items.ts';
import { familyOf } from './family.ts';
import { mm, mms } from './number.ts';
import { sourceOf, type SvgNode } from './node.ts';

/**
 * `textLength` holds the run to the width that was measured from the shipped font, whatever face
 * the viewer draws it in: what stands beside it stays where the layout put it.
 */
export function textNode(item: TextItem): SvgNode {
  const { x, y, width, em, face, ink, turn } = item;
  return {
    name: 'text',
    attributes: {
      ...sourceOf(item),
      x: mm(x),
      y: mm(y),
      'font-family': familyOf(face),
      'font-size': mm(em),
      fill: ink,
      'xml:space': 'preserve',
      ...(width > 0 ? { textLength: mm(width), lengthAdjust: 'spacingAndGlyphs' } : {}),
      ...(turn ? { transform: `rotate(${mms(turn, x, y)})` } : {}),
    },
    text: printable(item.text),
  };
}
