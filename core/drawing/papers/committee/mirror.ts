import type { PaperMm } from '../../../base/units.ts';
import type { Box, GroupItem, Item, Segment } from '../../items.ts';
import { keptName } from './text.ts';

function flippedSegments(segments: readonly Segment[], about: PaperMm): Segment[] {
  return segments.map(([verb, ...numbers]) => {
    const moved = numbers.map((one, at) => (at % 2 === 0 ? 2 * about - one : one));
    return [verb, ...moved] as unknown as Segment;
  });
}

function flippedBox(box: Box, about: PaperMm): Box {
  return { ...box, x: 2 * about - box.x - box.width };
}

/** From the left to the right end of what a group holds. */
function spanOf(items: readonly Item[]): readonly [PaperMm, PaperMm] {
  const ends = items.flatMap((item): number[] => {
    switch (item.kind) {
      case 'path':
      case 'region':
        return item.segments.flatMap(([, ...xy]) => xy.filter((_, at) => at % 2 === 0));
      case 'text':
      case 'image':
        return [item.x, item.x + item.width];
      case 'link':
        return [item.box.x, item.box.x + item.box.width];
      case 'group':
        return [...spanOf(item.items)];
    }
  });
  return [Math.min(...ends), Math.max(...ends)];
}

/** An item moved across the page, whole. */
export function shifted(item: Item, by: PaperMm): Item {
  switch (item.kind) {
    case 'path':
    case 'region':
      return {
        ...item,
        segments: item.segments.map(([verb, ...numbers]) => {
          const moved = numbers.map((one, at) => (at % 2 === 0 ? one + by : one));
          return [verb, ...moved] as unknown as Segment;
        }),
      };
    case 'text':
    case 'image':
      return { ...item, x: item.x + by };
    case 'link':
      return { ...item, box: { ...item.box, x: item.box.x + by } };
    case 'group': {
      const clip = item.clip && { ...item.clip, x: item.clip.x + by };
      const items = item.items.map((one) => shifted(one, by));
      return { ...item, items, ...(clip && { clip }) };
    }
  }
}

function mirroredGroup(item: GroupItem, about: PaperMm): Item {
  if (item.name === keptName) {
    const [from, to] = spanOf(item.items);
    return shifted(item, 2 * about - from - to);
  }
  const items = item.items.map((one) => mirrored(one, about));
  return { ...item, items, ...(item.clip && { clip: flippedBox(item.clip, about) }) };
}

/**
 * An item as a sheet has it whose lines run from right to left: left and right of the line `about`
 * change places. Lines of text, and marks made by hand, change their place and are not turned round.
 */
export function mirrored(item: Item, about: PaperMm): Item {
  switch (item.kind) {
    case 'path':
    case 'region':
      return { ...item, segments: flippedSegments(item.segments, about) };
    case 'text':
    case 'image':
      return { ...item, x: 2 * about - item.x - item.width };
    case 'link':
      return { ...item, box: flippedBox(item.box, about) };
    case 'group':
      return mirroredGroup(item, about);
  }
}
