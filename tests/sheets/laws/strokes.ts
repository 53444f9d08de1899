import type { Page, PathItem } from '../../../core/drawing/items.ts';
import { boxOfText } from '../extent.ts';
import { groupsNamed, isText, placedOn } from '../placed.ts';
import { mm, type Law } from './law.ts';
import { runsThrough, strokesOf } from './leaders.ts';

function figuresStruck(page: Page): string[] {
  const placed = placedOn({ ...page, items: groupsNamed(page.items, 'dimension') });
  const strokes = placed
    .flatMap(({ item }) => (item.kind === 'path' ? [item as PathItem] : []))
    .flatMap(strokesOf);
  return placed
    .filter(isText)
    .filter(({ item }) => strokes.some((one) => runsThrough(one, boxOfText(item))))
    .map(
      ({ item }) => `a dimension line runs through “${item.text}” at ${mm(item.x)} ${mm(item.y)}`,
    );
}

/** No line of a dimension runs through its figure, nor through another's. */
export const dimensionsReadable: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) => figuresStruck(page).map((what) => `page ${at + 1}: ${what}`));

/** Words off the match lines themselves that such a line runs through. */
function wordsOnMatchLines(page: Page): string[] {
  const lines = placedOn({ ...page, items: groupsNamed(page.items, 'matchLines') })
    .flatMap(({ item }) => (item.kind === 'path' && item.stroke ? [item] : []))
    .flatMap(strokesOf);
  return placedOn(page)
    .filter(isText)
    .filter(({ item }) => lines.some((one) => runsThrough(one, boxOfText(item))))
    .map(({ item }) => `a match line runs through “${item.text}” at ${mm(item.x)} ${mm(item.y)}`);
}

/** No match line runs through words or figures. */
export const matchLinesClear: Law = ({ drawing }) =>
  drawing.pages.flatMap((page, at) =>
    wordsOnMatchLines(page).map((what) => `page ${at + 1}: ${what}`),
  );
