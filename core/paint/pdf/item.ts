import type { Item } from '../../drawing/items.ts';
import { paintGroup } from './group.ts';
import { paintImage } from './image.ts';
import { paintLink } from './link.ts';
import { paintPath } from './path.ts';
import { paintRegion } from './region.ts';
import type { Sheet } from './sheet.ts';
import { paintText } from './text.ts';

export function paintItem(sheet: Sheet, item: Item): void {
  switch (item.kind) {
    case 'path':
      return paintPath(sheet.content, item);
    case 'text':
      return paintText(sheet, item);
    case 'region':
      return paintRegion(sheet, item);
    case 'image':
      return paintImage(sheet, item);
    case 'group':
      return paintGroup(sheet, item, (items) => items.forEach((one) => paintItem(sheet, one)));
    case 'link':
      return paintLink(sheet, item);
  }
}
