import type { Box, GroupItem, Item } from '../../drawing/items.ts';
import type { Content } from './content.ts';
import { layOutline } from './path.ts';
import type { Sheet } from './sheet.ts';

function clipTo(content: Content, { x, y, width, height }: Box): void {
  layOutline(content, [
    ['M', x, y],
    ['L', x + width, y],
    ['L', x + width, y + height],
    ['L', x, y + height],
    ['Z'],
  ]);
  content.write('W n');
}

/** `paintItems` is the painter's own switch, handed in so that files do not import in a circle. */
export function paintGroup(
  { content }: Sheet,
  { items, clip }: GroupItem,
  paintItems: (items: readonly Item[]) => void,
): void {
  if (!clip) {
    paintItems(items);
    return;
  }
  content.save();
  clipTo(content, clip);
  paintItems(items);
  content.restore();
}
