import type { Mark } from '../../record/headworks.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Box, GroupItem, Item, Page, PathItem, TextItem } from '../items.ts';
import { askedToSign } from './markBoxes.ts';

/** Room that nobody has signed in yet. */
export interface FreeMark {
  readonly role: Mark['role'];
  /** Within the lines of the mark's box, under its heading. */
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

/** The first words of a box, wherever among its groups they stand. */
function firstText(items: readonly Item[]): TextItem | undefined {
  for (const item of items) {
    if (item.kind === 'text') return item;
    const inner = isGroup(item) ? firstText(item.items) : undefined;
    if (inner) return inner;
  }
  return undefined;
}

/** Between what stands in a box and its lines. */
const pad: PaperMm = 0.6;
/** Under a baseline, for letters that reach below it: a quarter of the em. */
const below = 0.25;

/** What a heading leaves free of its box. */
function roomUnder(heading: TextItem | undefined, { x, y, width, height }: Box): Box {
  const top = heading ? heading.y + below * heading.em : y;
  return { x: x + pad, y: top + pad, width: width - 2 * pad, height: y + height - top - 2 * pad };
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
    const heading = firstText(box.items);
    return [{ role: roleOf(box, at), box: roomUnder(heading, boxAround(outline)) }];
  });
}
