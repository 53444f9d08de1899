import type { Mark } from '../../record/headworks.ts';
import type { Box, GroupItem, Item, Page, PathItem } from '../items.ts';
import { askedToSign } from './markBoxes.ts';

/** A box that nobody has signed yet. */
export interface FreeMark {
  readonly role: Mark['role'];
  readonly box: Box;
}

const isGroup = (item: Item): item is GroupItem => item.kind === 'group';

function groupsOfMarks(items: readonly Item[]): GroupItem[] {
  return items
    .filter(isGroup)
    .flatMap((one) => (one.name === 'marks' ? [one] : groupsOfMarks(one.items)));
}

/** The box around an outline of straight lines. */
function boxAround({ segments }: PathItem): Box {
  const points = segments.filter((one) => one[0] === 'M' || one[0] === 'L');
  const [xs, ys] = [points.map(([, x]) => x), points.map(([, , y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** Whose box it is: by its name, else by its place in the order of `drawMarkBoxes`. */
function roleOf({ name }: GroupItem, at: number): Mark['role'] {
  const named = askedToSign.find((role) => role === name);
  return named ?? askedToSign[at % askedToSign.length]!;
}

/** The boxes for marks on a page that stand free. */
export function freeMarks({ items }: Page): FreeMark[] {
  const boxes = groupsOfMarks(items).flatMap((marks) => marks.items.filter(isGroup));
  return boxes.flatMap((box, at) => {
    const outline = box.items.find((item) => item.kind === 'path');
    if (box.source !== undefined || !outline) return [];
    return [{ role: roleOf(box, at), box: boxAround(outline) }];
  });
}
