import type { PaperMm } from '../base/units.ts';
import type { Box, Item, LinkItem, Segment } from '../drawing/items.ts';

function segmentAside(segment: Segment, dx: PaperMm): Segment {
  switch (segment[0]) {
    case 'M':
    case 'L':
      return [segment[0], segment[1] + dx, segment[2]];
    case 'C': {
      const [kind, ax, ay, bx, by, x, y] = segment;
      return [kind, ax + dx, ay, bx + dx, by, x + dx, y];
    }
    case 'Z':
      return segment;
  }
}

const boxAside = (box: Box, dx: PaperMm): Box => ({ ...box, x: box.x + dx });

/** Items as they stand so many millimetres further to the right; hatches keep to the page. */
export function aside(items: readonly Item[], dx: PaperMm): readonly Item[] {
  if (dx === 0) return items;
  return items.map((item): Item => {
    switch (item.kind) {
      case 'text':
      case 'image':
        return { ...item, x: item.x + dx };
      case 'path':
      case 'region':
        return { ...item, segments: item.segments.map((one) => segmentAside(one, dx)) };
      case 'group':
        return {
          ...item,
          items: aside(item.items, dx),
          ...(item.clip && { clip: boxAside(item.clip, dx) }),
        };
      case 'link':
        return { ...item, box: boxAside(item.box, dx) };
    }
  });
}

function leads(item: LinkItem, pageOf: (page: number) => number | undefined): LinkItem[] {
  if (!('page' in item.to)) return [item];
  const page = pageOf(item.to.page);
  return page === undefined ? [] : [{ ...item, to: { page } }];
}

function holdsLink(item: Item): boolean {
  return item.kind === 'link' || (item.kind === 'group' && item.items.some(holdsLink));
}

/** Items whose links lead to other pages; where there is none for a link, it is left out. */
export function led(
  items: readonly Item[],
  pageOf: (page: number) => number | undefined,
): readonly Item[] {
  if (!items.some(holdsLink)) return items;
  return items.flatMap((item): readonly Item[] => {
    if (item.kind === 'link') return leads(item, pageOf);
    if (item.kind === 'group') return [{ ...item, items: led(item.items, pageOf) }];
    return [item];
  });
}
