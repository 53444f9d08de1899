import type { GroupItem, Item, PathItem } from '../../../core/drawing/items.ts';
import { shownLevels } from '../../../core/drawing/parts/section/waterLevels.ts';
import type { DrawnSheet } from '../drawn.ts';
import { groupsNamed, isText, placedOn, withoutDetails } from '../placed.ts';
import { numberOf, rulerOf, type Ruler } from '../ruler.ts';
import { mm, type Law } from './law.ts';

interface RuledPage {
  readonly number: number;
  readonly ruler: Ruler;
  readonly items: readonly Item[];
}

function ruledPages({ drawing }: DrawnSheet): RuledPage[] {
  return drawing.pages.flatMap((page, at) => {
    const ruler = rulerOf(page);
    const { items } = withoutDetails(page);
    return ruler ? [{ number: at + 1, ruler, items }] : [];
  });
}

/** Where the points of a page's signs stand: the first point of each filled outline. */
function tips(page: RuledPage, group: string, source: string): number[] {
  return groupsNamed(page.items, group)
    .flatMap(({ items }) => placedOn({ width: 0, height: 0, items }))
    .filter(({ item, source: own }) => (item as PathItem).fill && (own ?? '') === source)
    .map(({ item }) => (item as PathItem).segments[0]![2] as number);
}

function onOnePage(sheet: DrawnSheet, group: string, source: string, depthM: number): string[] {
  const seen = ruledPages(sheet).filter((page) =>
    tips(page, group, source).some((y) => Math.abs(y - page.ruler.yAt(depthM)) < 1e-4),
  );
  return seen.length === 1 ? [] : [`${source} at ${depthM} m stands on ${seen.length} pages`];
}

/** Strikes, water levels and the pump's intake point at their depth, each on one page. */
export const pointsAtDepth: Law = (sheet) => {
  const { strikes, levels, pump } = sheet.model;
  return [
    ...strikes.flatMap(({ path, depthM }) => onOnePage(sheet, 'waterColumn', path, depthM)),
    ...shownLevels(levels).flatMap(({ path, depthM }) =>
      onOnePage(sheet, 'waterLevels', path, depthM),
    ),
    ...(pump?.intakeM === undefined
      ? []
      : onOnePage(sheet, 'pump', `${pump.path}.intake`, pump.intakeM)),
  ];
};

/** How far from its depth a leader may end: the intake's ends in the middle of its arrow head. */
const ends = (source: string | undefined) => (source?.endsWith('.intake') ? 0.81 : 1e-4);

function figureOf({ items }: GroupItem): number | undefined {
  const bold = placedOn({ width: 0, height: 0, items }).filter(isText);
  const figure = bold.find(({ item }) => item.face === 'bold');
  return figure && numberOf(figure.item.text);
}

function wrongFigures({ number, ruler, items }: RuledPage): string[] {
  return groupsNamed(items, 'callout').flatMap((callout) => {
    const figure = figureOf(callout);
    if (figure === undefined) return [];
    const leader = callout.items[0] as PathItem;
    const [, , y] = leader.segments.at(-1) as readonly ['L', number, number];
    // Figures are to the centimetre; what stands above ground says so in words.
    const rounding = 0.0051 * (1000 / ruler.scale) + ends(callout.source);
    const off = [figure, -figure].map((one) => Math.abs(ruler.yAt(one) - y));
    if (Math.min(...off) <= rounding) return [];
    return [`page ${number}: ${figure} of ${callout.source} leads to ${mm(y)}`];
  });
}

/** Each figure beside the section is the depth at which its leader ends. */
export const figuresAtDepth: Law = (sheet) => ruledPages(sheet).flatMap(wrongFigures);
