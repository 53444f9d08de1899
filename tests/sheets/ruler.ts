import { languages } from '../../core/base/language.ts';
import type { Page, PathItem } from '../../core/drawing/items.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import { capitalsHigh } from './measure.ts';
import { groupsNamed, isText, textsOn, placedOn, type Placed } from './placed.ts';

export interface Figure {
  readonly depthM: number;
  readonly y: number;
}

export interface LeftOut {
  readonly fromM: number;
  readonly toM: number;
}

/** What a page's own depth ruler says, read off the page as a person with a tape would. */
export interface Ruler {
  /** From the words under the bar of depths: 200 for 1:200. */
  readonly scale: number;
  /** Heights of all ticks, from the top down. */
  readonly ticks: readonly number[];
  /** Depths with the height of their tick. */
  readonly figures: readonly Figure[];
  /** The depths that are said not to be drawn, from the top down. */
  readonly leftOut: readonly LeftOut[];
  /** A depth that is left out is taken to stand within its break. */
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

const notDrawn = languages.map((language) => sheetWordsIn(language).notDrawn);
const saidLeftOut = new RegExp(`^(\\S+)–(\\S+) m (?:${notDrawn.join('|')})$`);

/** What the words within breaks say is left out; each is said once in every part of the drawing. */
function leftOutOn(page: Page): LeftOut[] {
  const said = textsOn(page).flatMap(({ item }) => {
    const [, from, to] = saidLeftOut.exec(item.text) ?? [];
    return from && to ? [{ fromM: numberOf(from), toM: numberOf(to) }] : [];
  });
  const each = new Map(said.map((one) => [one.fromM, one]));
  return [...each.values()].sort((a, b) => a.fromM - b.fromM);
}

/** A stretch between breaks, known by one of its own figures. */
interface Kept extends LeftOut {
  readonly figure: Figure;
}

function keptBetween(leftOut: readonly LeftOut[], figures: readonly Figure[]): Kept[] {
  const starts = [-Infinity, ...leftOut.map(({ toM }) => toM)];
  const ends = [...leftOut.map(({ fromM }) => fromM), Infinity];
  return starts.map((fromM, at) => {
    const toM = ends[at]!;
    const figure = figures.find(({ depthM }) => depthM >= fromM && depthM <= toM);
    if (!figure) throw new Error(`no figure from ${fromM} to ${toM} m`);
    return { fromM, toM, figure };
  });
}

/** Depth and height by the figure of each stretch, and evenly over what lies between two. */
function readings(kept: readonly Kept[], mmPerMetre: number): Pick<Ruler, 'yAt' | 'depthAt'> {
  const yIn = ({ figure }: Kept, depthM: number) =>
    figure.y + (depthM - figure.depthM) * mmPerMetre;
  const inBreak = (
    value: number,
    [a, b]: readonly [number, number],
    [c, d]: readonly [number, number],
  ) => c + ((value - a) / (b - a)) * (d - c);
  const breaks = kept.slice(1).map((lower, at) => {
    const upper = kept[at]!;
    const depths = [upper.toM, lower.fromM] as const;
    return { depths, ys: [yIn(upper, depths[0]), yIn(lower, depths[1])] as const };
  });
  return {
    yAt: (depthM) => {
      const hidden = breaks.find(({ depths: [a, b] }) => depthM > a && depthM < b);
      if (hidden) return inBreak(depthM, hidden.depths, hidden.ys);
      return yIn(
        kept.find(({ fromM, toM }) => depthM >= fromM && depthM <= toM)!,
        depthM,
      );
    },
    depthAt: (y) => {
      const hidden = breaks.find(({ ys: [a, b] }) => y > a && y < b);
      if (hidden) return inBreak(y, hidden.ys, hidden.depths);
      const at = breaks.filter(({ ys }) => y >= ys[1]).length;
      const { figure } = kept[at]!;
      return figure.depthM + (y - figure.y) / mmPerMetre;
    },
  };
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
  if (figures.length === 0) throw new Error('the ruler has no figure');
  const leftOut = leftOutOn(page);
  const read = readings(keptBetween(leftOut, figures), 1000 / scale);
  return { scale, ticks, figures, leftOut, ...read };
}
