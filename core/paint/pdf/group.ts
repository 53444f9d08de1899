import type { jsPDF } from 'jspdf';
import type { Box, GroupItem, Item } from '../../drawing/items.ts';
import { layOutline } from './path.ts';
import type { Sheet } from './sheet.ts';

function clipTo(doc: jsPDF, { x, y, width, height }: Box): void {
  layOutline(doc, [
    ['M', x, y],
    ['L', x + width, y],
    ['L', x + width, y + height],
    ['L', x, y + height],
    ['Z'],
  ]);
  doc.clip();
  doc.discardPath();
}

/** `paintItems` is the painter's own switch, handed in so that files do not import in a circle. */
export function paintGroup(
  { book: { doc } }: Sheet,
  { items, clip }: GroupItem,
  paintItems: (items: readonly Item[]) => void,
): void {
  if (!clip) {
    paintItems(items);
    return;
  }
  doc.saveGraphicsState();
  clipTo(doc, clip);
  paintItems(items);
  doc.restoreGraphicsState();
}
