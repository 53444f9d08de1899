import { languages } from '../../core/base/language.ts';
import type { Page, PathItem } from '../../core/drawing/items.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import { capitalsHigh } from './measure.ts';
import { groupsNamed, isText, textsOn, placedOn, type Placed } from './placed.ts';

/** What a page's own depth ruler says, read off the page as a person with a tape would. */
export interface Ruler {
  /** From the words under the bar of depths: 200 for 1:200. */
  readonly scale: number;
  /** Heights of all ticks, from the top down. */
  readonly ticks: readonly number[];
  /** Depths with the height of their tick. */
  readonly figures: readonly { readonly depthM: number; readonly y: number }[];
  yAt(depthM: number): number;
  depthAt(y: number): number;
}

/** A figure of a sheet as a number, whichever mark its language sets. */
export function numberOf(figure: string): number {
  return Number(figure.replace(',', '.'));
}

const depthBars = languages.map((language) => sheetWordsIn(language).scaleBars.depth);
const statedScale = new RegExp(`^(?:${depthBars.join('|')}) 1:(\\d+)$`);

function scaleOn(page: Page): number | undefined {
  const says = textsOn(page).map(({ item }) => statedScale.exec(item.text)?.[1]);
  const found = says.find((one) => one !== undefined);
  return found === undefined ? undefined : Number(found);
}

function heightOf({ item }: Placed): number | undefined {
  const [start, end] = (item as PathItem).segments;
  return start?.[0] === 'M' && end?.[0] === 'L' && start[2] === end[2] ? start[2] : undefined;
}

/** The ruler of a page; undefined on a page without one. Throws where it cannot be read. */
export function rulerOf(page: Page): Ruler | undefined {
  const [group] = groupsNamed(page.items, 'depthRuler');
  const scale = scaleOn(page);
  if (!group || scale === undefined) return undefined;
  const placed = placedOn({ ...page, items: group.items });
  const ticks = placed
    .filter(({ item }) => item.kind === 'path')
    .map((one) => heightOf(one)!)
    .sort((a, b) => a - b);
  const figures = placed.filter(isText).map(({ item }) => {
    const middle = item.y - capitalsHigh(item.em) / 2;
    const y = ticks.find((tick) => Math.abs(tick - middle) < 0.01);
    if (y === undefined) throw new Error(`the figure ${item.text} stands at no tick`);
    return { depthM: numberOf(item.text), y };
  });
  const [first] = figures;
  if (!first) throw new Error('the ruler has no figure');
  const mmPerMetre = 1000 / scale;
  return {
    scale,
    ticks,
    figures,
    yAt: (depthM) => first.y + (depthM - first.depthM) * mmPerMetre,
    depthAt: (y) => first.depthM + (y - first.y) / mmPerMetre,
  };
}
