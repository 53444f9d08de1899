import type { RecordPath } from '../../../base/recordPath.ts';
import type { Item } from '../../items.ts';

/** An item, and all within it, whose sources lead to where `pathOf` says that they stand. */
export function leadingBack(item: Item, pathOf: (path: RecordPath) => RecordPath): Item {
  const { source } = item;
  const led = { ...item, ...(source !== undefined && { source: pathOf(source) }) };
  if (led.kind !== 'group') return led;
  return { ...led, items: led.items.map((one) => leadingBack(one, pathOf)) };
}
